using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Temperature to which air must cool for hoar frost to form on ice.</summary>
/// <remarks>
/// <para><b>Formula:</b> vapour pressure from the curve over water (relative humidity is over water at all temperatures), inverted on
/// the curve over ice. It lies above the dew point, and in air near saturation over water above the air temperature too.</para>
/// <para><b>Source:</b> [WMO8] annex 4.B; default curves [BUCK81]. <b>Error:</b> at most 0.025 K against Hyland-Wexler for air from -20 to 0 °C
/// and 30 to 100 % (CurveErrorTests).</para>
/// </remarks>
public static class FrostPoint
{
    /// <summary>Highest vapour pressure with a frost point: saturation over ice at 0 °C, rounded up. [kPa]</summary>
    public const double HighestVapourPressureKPa = 0.6113;

    /// <summary>Frost point from relative humidity. [°C]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, above 0 up to 100. [%]</param>
    /// <param name="waterCurve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <param name="iceCurve">Saturation curve over ice; Buck 1981 e_i2 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the air is too moist to have a frost point.</exception>
    public static Celsius FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, SaturationCurve? waterCurve = null, SaturationCurve? iceCurve = null) =>
        FromVapourPressure(VapourPressure.FromRelativeHumidity(temperature, humidity, waterCurve), iceCurve);

    /// <summary>Frost point from vapour pressure. [°C]</summary>
    /// <param name="vapourPressure">Vapour pressure, above 0 up to 0.6113. [kPa]</param>
    /// <param name="iceCurve">Saturation curve over ice; Buck 1981 e_i2 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The vapour pressure is impossible, or too high for a frost point.</exception>
    public static Celsius FromVapourPressure(KiloPascal vapourPressure, SaturationCurve? iceCurve = null) =>
        new((iceCurve ?? SaturationCurve.Ice).TemperatureC(
            Guard.AboveUpTo(vapourPressure.Value, 0, HighestVapourPressureKPa, "kPa", nameof(vapourPressure))));
}
