using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Relative humidity over liquid water, from whatever was measured; from two bulbs see <see cref="Psychrometer"/>.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>RH = 100·e/es(t)</c>. <b>Source:</b> [WMO8] annex 4.B. <b>Error:</b> the curve's error cancels when e came
/// from the same curve; the ideal-gas convention (enhancement factor 1) cancels too.</para>
/// <para>Air holding more vapour than saturation is refused; up to one part in a million more counts as rounding and gives 100 %.</para>
/// </remarks>
public static class RelativeHumidityFrom
{
    private const double Rounding = 1e-6;

    /// <summary>Relative humidity from vapour pressure. [%]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="vapourPressure">Vapour pressure, 0 to the saturation value. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the air would be supersaturated.</exception>
    public static RelativeHumidity VapourPressure(
        Celsius temperature, KiloPascal vapourPressure, SaturationCurve? curve = null)
    {
        double saturation = Psychrometrics.VapourPressure.CurveOr(curve).VapourPressureKPa(Limits.Temperature(temperature));
        double e = vapourPressure.Value;
        double allowed = e > saturation && e <= saturation * (1 + Rounding) ? saturation : e;
        Guard.Within(allowed, 0, saturation, "kPa", nameof(vapourPressure));
        return new(100 * (allowed / saturation));
    }

    /// <summary>Relative humidity from the dew point. [%]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="dewPoint">Dew point over water, up to the air temperature. [°C]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the dew point is above the air temperature.</exception>
    public static RelativeHumidity DewPoint(Celsius temperature, Celsius dewPoint, SaturationCurve? curve = null)
    {
        double t = Limits.Temperature(temperature);
        Guard.Within(dewPoint.Value, Limits.LowestTemperatureC, double.IsNaN(t) ? Limits.HighestTemperatureC : t, "°C", nameof(dewPoint));
        return VapourPressure(temperature, Psychrometrics.VapourPressure.FromDewPoint(dewPoint, curve), curve);
    }

    /// <summary>Relative humidity from the humidity (mixing) ratio. [%]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="ratio">Vapour to dry air, 0 to 1. [kg/kg]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the air would be supersaturated.</exception>
    public static RelativeHumidity HumidityRatio(
        Celsius temperature, KilogramPerKilogram ratio, KiloPascal airPressure, SaturationCurve? curve = null) =>
        VapourPressure(temperature, Psychrometrics.VapourPressure.FromHumidityRatio(ratio, airPressure), curve);

    /// <summary>Relative humidity from absolute humidity. [%]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="absoluteHumidity">Mass of vapour in a volume of air. [g/m³]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the air would be supersaturated.</exception>
    public static RelativeHumidity AbsoluteHumidity(
        Celsius temperature, GramPerCubicMetre absoluteHumidity, SaturationCurve? curve = null) =>
        VapourPressure(
            temperature, Psychrometrics.VapourPressure.FromAbsoluteHumidity(temperature, absoluteHumidity), curve);
}
