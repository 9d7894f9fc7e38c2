using ClimateLens.Analysis.Stages;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>Half-widths of the rectangular errors of a house's sensors and assumptions.</summary>
/// <param name="TemperatureK">Main air temperature. [K]</param>
/// <param name="HumidityPct">Main relative humidity. [%]</param>
/// <param name="LeafOffsetK">Assumed night difference of the leaf. [K]</param>
/// <param name="LeafSensorK">Measured leaf temperature. [K]</param>
/// <param name="LeafBalanceK">Leaf temperature from the energy balance, dry and in the dark. [K]</param>
/// <param name="CanopySensorK">Temperature sensor in the canopy. [K]</param>
/// <param name="CanopySensorPct">Humidity sensor in the canopy. [%]</param>
internal readonly record struct ErrorWidths(
    double TemperatureK, double HumidityPct, double LeafOffsetK, double LeafSensorK, double LeafBalanceK, double CanopySensorK, double CanopySensorPct)
{
    /// <summary>The air speed at the leaf may be this much greater or smaller. [1]</summary>
    public const double AirSpeedFactor = 2;

    /// <summary>The sun that leaves take up may be this share more or less; as said at <see cref="Foliage.LightOnLeaves"/>. [1]</summary>
    public const double LightShare = 0.3;

    /// <summary>The film that a leaf holds may be this much thicker or thinner. [1]</summary>
    public const double FilmFactor = 2;

    /// <summary>The widths of a house.</summary>
    public static ErrorWidths Of(HousePeriod period) => new(
        BiasDraws.AirTemperature(period).HalfWidth,
        BiasDraws.Humidity(period).HalfWidth,
        period.Input.House.Rules.LeafNightOffsetErrorK,
        BiasDraws.Leaf(period).HalfWidth,
        period.Input.House.Rules.LeafBalanceErrorK,
        BiasDraws.Canopy(period, "canopyTemperature").HalfWidth,
        BiasDraws.Canopy(period, "canopyHumidity").HalfWidth);
}
