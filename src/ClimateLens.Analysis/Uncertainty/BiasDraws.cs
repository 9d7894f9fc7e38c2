using ClimateLens.Analysis.Stages;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>
/// The draws that carry sensor error through a review: in each, every sensor reads the same amount too high or too low in
/// every hour, since a humidity sensor that is 2 % high is so all week.
/// </summary>
/// <remarks>
/// <para><b>Method:</b> a stated ± range without a distribution counts as rectangular: [GUM08] 4.3.7; drawn as in
/// [GUMS1]. On top, humidity gets a small error anew in every hour, rectangular, a tenth as wide (choice of this
/// project, no source: rounding, and air that is not the same all over the house).</para>
/// </remarks>
public sealed class BiasDraws
{
    /// <summary>Seed of every draw, printed with each review.</summary>
    public const long Seed = 20250901;

    /// <summary>Number of draws.</summary>
    public const int Count = 400;

    /// <summary>The hourly humidity error as a share of the sensor's half-width. [1]</summary>
    public const double HourlyShare = 0.1;

    private BiasDraws(double temperatureK, double humidityPct, double leafOffsetK, double leafSensorK)
    {
        HourlyHumidityPct = HourlyShare * humidityPct;
        SeededRandom random = new(unchecked((ulong)Seed));
        for (int draw = 0; draw < Count; draw++)
        {
            // All four are drawn whether needed or not, so that adding a leaf sensor leaves the other draws as they are.
            TemperatureK[draw] = temperatureK * random.NextUniform(-1, 1);
            HumidityPct[draw] = humidityPct * random.NextUniform(-1, 1);
            LeafOffsetK[draw] = leafOffsetK * random.NextUniform(-1, 1);
            LeafSensorK[draw] = leafSensorK * random.NextUniform(-1, 1);
        }
    }

    /// <summary>Error of air temperature, by draw. [K]</summary>
    public double[] TemperatureK { get; } = new double[Count];

    /// <summary>Error of relative humidity, by draw. [%]</summary>
    public double[] HumidityPct { get; } = new double[Count];

    /// <summary>Error of the assumed night offset of the leaf, by draw; added to the leaf temperature at night. [K]</summary>
    public double[] LeafOffsetK { get; } = new double[Count];

    /// <summary>Error of a measured leaf temperature, by draw. [K]</summary>
    public double[] LeafSensorK { get; } = new double[Count];

    /// <summary>Half-width of the error of humidity that is drawn anew in every hour. [%]</summary>
    public double HourlyHumidityPct { get; }

    /// <summary>The draws for a house: by its sensors' accuracies and its rules.</summary>
    public static BiasDraws For(HousePeriod period) => new(
        AirTemperature(period).HalfWidth,
        Humidity(period).HalfWidth,
        period.Input.House.Rules.LeafNightOffsetErrorK,
        Leaf(period).HalfWidth);

    /// <summary>Accuracy of the main air temperature.</summary>
    public static SensorAccuracy AirTemperature(HousePeriod period)
        => SensorAccuracy.Of(period.Input.House, "airTemperature", period.Temperature?.Sensor ?? "");

    /// <summary>Accuracy of relative humidity; that of the channel where humidity is derived.</summary>
    public static SensorAccuracy Humidity(HousePeriod period)
        => SensorAccuracy.Of(period.Input.House, "relativeHumidity", period.Humidity?.Sensor ?? "");

    /// <summary>Accuracy of a measured leaf temperature.</summary>
    public static SensorAccuracy Leaf(HousePeriod period)
        => SensorAccuracy.Of(period.Input.House, "leafTemperature", period.Leaf?.Sensor ?? "");
}
