using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Vapour pressure of moist air, from whatever was measured; from two bulbs see <see cref="Psychrometer"/>.</summary>
public static class VapourPressure
{
    /// <summary>Vapour pressure from relative humidity. [kPa]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>e = es(t)·RH/100</c>. <b>Source:</b> definition of relative humidity, [WMO8] annex 4.B.
    /// <b>Error:</b> that of the curve.
    /// </remarks>
    public static KiloPascal FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, SaturationCurve? curve = null) =>
        new(CurveOr(curve).VapourPressureKPa(Limits.Temperature(temperature)) * (Limits.Humidity(humidity) / 100));

    /// <summary>Vapour pressure from the dew point. [kPa]</summary>
    /// <param name="dewPoint">Dew point over water, -100 to 100. [°C]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The dew point is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>e = es(Td)</c>. <b>Source:</b> [FAO56] eq. 14. <b>Error:</b> that of the curve.</remarks>
    public static KiloPascal FromDewPoint(Celsius dewPoint, SaturationCurve? curve = null) =>
        CurveOr(curve).VapourPressure(dewPoint);

    /// <summary>Vapour pressure from the frost point. [kPa]</summary>
    /// <param name="frostPoint">Frost point, -100 to 0. [°C]</param>
    /// <param name="iceCurve">Saturation curve over ice; Buck 1981 e_i2 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frost point is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>e = ei(Tf)</c>. <b>Source:</b> [WMO8] annex 4.B. <b>Error:</b> that of the curve.</remarks>
    public static KiloPascal FromFrostPoint(Celsius frostPoint, SaturationCurve? iceCurve = null) =>
        new((iceCurve ?? SaturationCurve.Ice).VapourPressureKPa(
            Guard.Within(frostPoint.Value, Limits.LowestTemperatureC, 0, "°C", nameof(frostPoint))));

    /// <summary>Vapour pressure from the humidity (mixing) ratio. [kPa]</summary>
    /// <param name="ratio">Vapour to dry air, 0 to 1. [kg/kg]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>e = p·W/(0.621945 + W)</c>. <b>Source:</b> [ASHRAE17] eq. 20 solved for e. <b>Error:</b> ideal gas, below
    /// 0.5 % (the enhancement factor).
    /// </remarks>
    public static KiloPascal FromHumidityRatio(KilogramPerKilogram ratio, KiloPascal airPressure)
    {
        double w = Guard.Within(ratio.Value, 0, 1, "kg/kg", nameof(ratio));
        return new(Limits.AirPressure(airPressure) * w / (HumidityRatio.MolarMassRatio + w));
    }

    /// <summary>Vapour pressure from absolute humidity. [kPa]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="absoluteHumidity">Mass of vapour in a volume of air, 0 to 600. [g/m³]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>e = AH·T/2166.79</c>, T in K: the ideal gas law, inverse of <see cref="VapourDensity.FromVapourPressure"/>.
    /// </remarks>
    public static KiloPascal FromAbsoluteHumidity(Celsius temperature, GramPerCubicMetre absoluteHumidity) =>
        new(Guard.Within(absoluteHumidity.Value, 0, 600, "g/m³", nameof(absoluteHumidity))
            * (Limits.Temperature(temperature) + Limits.ZeroCelsiusK) / VapourDensity.GramKelvinPerCubicMetreKPa);

    internal static SaturationCurve CurveOr(SaturationCurve? curve) => curve ?? SaturationCurve.Water;
}
