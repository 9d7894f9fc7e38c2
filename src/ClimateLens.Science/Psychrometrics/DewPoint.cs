using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Temperature to which air must cool for dew to form on liquid water.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>g = ln(e/A)</c>, <c>Td = C·g/(B - g)</c>: the saturation curve, inverted. Air pressure cancels.</para>
/// <para><b>Source:</b> [BUCK81] inverted, as [WMO8] annex 4.B does its own form.</para>
/// <para><b>Error:</b> at most 0.014 K against Hyland-Wexler, 0 to 40 °C and 30 to 100 % (CurveErrorTests). A sensor does worse:
/// ±2 % RH moves it by 0.35 K at 90 % RH and 18 °C; see <see cref="SensorError"/>.</para>
/// <para><b>Check value:</b> 25 °C and 53.80 % give 15.0 °C ([METPY], within 0.01 K).</para>
/// </remarks>
public static class DewPoint
{
    /// <summary>Dew point from relative humidity, never above the air temperature. [°C]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, above 0 up to 100. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible; perfectly dry air has no dew point.</exception>
    public static Celsius FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, SaturationCurve? curve = null)
    {
        SaturationCurve used = VapourPressure.CurveOr(curve);
        double t = Limits.Temperature(temperature);
        double share = Limits.HumidityAboveZero(humidity) / 100;
        double dewPoint = used.TemperatureC(share * used.VapourPressureKPa(t));
        return new(Math.Min(t, dewPoint)); // Min: rounding passes t by 1e-14 at 100 %; it keeps NaN
    }

    /// <summary>Dew point from vapour pressure. [°C]</summary>
    /// <param name="vapourPressure">Vapour pressure, above 0 up to 105. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The vapour pressure is impossible.</exception>
    public static Celsius FromVapourPressure(KiloPascal vapourPressure, SaturationCurve? curve = null) =>
        VapourPressure.CurveOr(curve).Temperature(vapourPressure);

    /// <summary>How far a surface is above the dew point of the air: at 0 or below, dew forms on it. [K]</summary>
    /// <param name="surface">Temperature of the leaf or other surface, -100 to 100. [°C]</param>
    /// <param name="dewPoint">Dew point of the air at that surface, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KelvinDifference Margin(Celsius surface, Celsius dewPoint) =>
        new(Limits.Temperature(surface) - Limits.Temperature(dewPoint));
}
