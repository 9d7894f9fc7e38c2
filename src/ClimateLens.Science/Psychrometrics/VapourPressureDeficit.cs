using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>How far moist air is from saturation, as a pressure: what pulls water out of leaves.</summary>
/// <remarks><b>Source:</b> [FAO56] chapter 3; default curve [BUCK81]. <b>Error:</b> that of the curve; near saturation a sensor does far
/// worse: ±2 % RH is ±40 % of the deficit at 95 % RH, see <see cref="SensorError"/>.</remarks>
public static class VapourPressureDeficit
{
    /// <summary>Vapour-pressure deficit of the air, 0 or more. [kPa]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>es(t)·(1 - RH/100)</c>. <b>Check value:</b> 18 °C and 85 % give 0.31 kPa.</remarks>
    public static KiloPascal OfAir(Celsius temperature, RelativeHumidity humidity, SaturationCurve? curve = null) =>
        new(VapourPressure.CurveOr(curve).VapourPressureKPa(Limits.Temperature(temperature))
            * (1 - (Limits.Humidity(humidity) / 100)));

    /// <summary>Vapour-pressure deficit from leaf to air; negative where water condenses on the leaf. [kPa]</summary>
    /// <param name="leaf">Leaf temperature, -100 to 100; the air inside it is taken as saturated. [°C]</param>
    /// <param name="air">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity of the air over water, 0 to 100. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>es(leaf) - es(air)·RH/100</c>. <b>Check value:</b> leaf 16 °C in air of 18 °C and 85 %: 0.064 kPa.</remarks>
    public static KiloPascal LeafToAir(
        Celsius leaf, Celsius air, RelativeHumidity humidity, SaturationCurve? curve = null) =>
        new(VapourPressure.CurveOr(curve).VapourPressureKPa(Limits.Temperature(leaf))
            - VapourPressure.FromRelativeHumidity(air, humidity, curve).Value);
}
