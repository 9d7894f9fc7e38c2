using ClimateLens.Analysis.Stages;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>
/// The draws that carry the errors of sensors and assumptions through a review: in each, every sensor reads the same amount too high or too low
/// in every hour, since a humidity sensor that is 2 % high is so all week.
/// </summary>
/// <remarks>
/// <para><b>Method:</b> a stated ± range without a distribution counts as rectangular: [GUM08] 4.3.7; drawn as in
/// [GUMS1]. What is assumed of a canopy has standard errors and is drawn as normal. Air speed at the leaf is 0.1 m/s times or over 2 and the film that a leaf holds 0.2 mm times or
/// over 2, even on the logarithm (choice of this project, no source); the sun that leaves take up is 30 % more or less (LightOnLeaves). On top, humidity gets a small error anew in every hour, rectangular, a
/// tenth as wide (choice of this project, no source: rounding, and air that is not the same all over the house).</para>
/// </remarks>
public sealed class BiasDraws
{
    /// <summary>Seed of every draw, printed with each review.</summary>
    public const long Seed = 20250901;

    /// <summary>Number of draws.</summary>
    public const int Count = 200;

    /// <summary>The hourly humidity error as a share of the sensor's half-width. [1]</summary>
    public const double HourlyShare = 0.1;

    private readonly FoliageErrors[] _errors = new FoliageErrors[Count];

    private BiasDraws(ErrorWidths widths)
    {
        HourlyHumidityPct = HourlyShare * widths.HumidityPct;
        SeededRandom random = new(unchecked((ulong)Seed));
        for (int draw = 0; draw < Count; draw++)
        {
            // All are drawn whether needed or not, so that adding a sensor leaves the other draws as they are; a new cause gets a round of its own.
            _errors[draw] = new FoliageErrors
            {
                TemperatureK = TemperatureK[draw] = widths.TemperatureK * random.NextUniform(-1, 1),
                HumidityPct = HumidityPct[draw] = widths.HumidityPct * random.NextUniform(-1, 1),
                LeafOffsetK = widths.LeafOffsetK * random.NextUniform(-1, 1),
                LeafSensorK = widths.LeafSensorK * random.NextUniform(-1, 1),
                LeafBalanceK = widths.LeafBalanceK * random.NextUniform(-1, 1),
                CanopySensorK = widths.CanopySensorK * random.NextUniform(-1, 1),
                CanopySensorPct = widths.CanopySensorPct * random.NextUniform(-1, 1),
                CanopyTemperatureScore = random.NextNormal(),
                CanopyHumidityScore = random.NextNormal(),
                CoverQuantile = random.NextUniform(0, 1),
                AirSpeedFactor = Math.Pow(ErrorWidths.AirSpeedFactor, random.NextUniform(-1, 1)),
                FilmFactor = Math.Pow(ErrorWidths.FilmFactor, random.NextUniform(-1, 1)),
            };
        }

        for (int draw = 0; draw < Count; draw++)
        {
            _errors[draw] = _errors[draw] with { LightFactor = 1 + (ErrorWidths.LightShare * random.NextUniform(-1, 1)) };
        }
    }

    /// <summary>Error of air temperature, by draw. [K]</summary>
    public double[] TemperatureK { get; } = new double[Count];

    /// <summary>Error of relative humidity, by draw. [%]</summary>
    public double[] HumidityPct { get; } = new double[Count];

    /// <summary>Half-width of the error of humidity that is drawn anew in every hour. [%]</summary>
    public double HourlyHumidityPct { get; }

    /// <summary>All errors of a draw.</summary>
    internal FoliageErrors At(int draw) => _errors[draw];

    /// <summary>The draws for a house: by its sensors' accuracies and its rules.</summary>
    public static BiasDraws For(HousePeriod period) => new(ErrorWidths.Of(period));

    /// <summary>Accuracy of the main air temperature.</summary>
    public static SensorAccuracy AirTemperature(HousePeriod period)
        => SensorAccuracy.Of(period.Input.House, "airTemperature", period.Temperature?.Sensor ?? "");

    /// <summary>Accuracy of relative humidity; that of the channel where humidity is derived.</summary>
    public static SensorAccuracy Humidity(HousePeriod period)
        => SensorAccuracy.Of(period.Input.House, "relativeHumidity", period.Humidity?.Sensor ?? "");

    /// <summary>Accuracy of a measured leaf temperature.</summary>
    public static SensorAccuracy Leaf(HousePeriod period)
        => SensorAccuracy.Of(period.Input.House, "leafTemperature", period.Leaf?.Sensor ?? "");

    /// <summary>Accuracy of a sensor in the canopy.</summary>
    /// <param name="period">The house period.</param>
    /// <param name="channel"><c>canopyTemperature</c> or <c>canopyHumidity</c>.</param>
    public static SensorAccuracy Canopy(HousePeriod period, string channel)
        => SensorAccuracy.Of(period.Input.House, channel, period.Series.FirstOrDefault(s => s.Channel.Name == channel)?.Sensor ?? "");
}
