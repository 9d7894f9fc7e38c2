using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Humidity from a dry and a wet bulb, with the coefficient that fits the bulb's ventilation.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>e = es(tw) - a·p·(t - tw)</c>, a = 0.000662, 0.000800 or 0.001200 /K.</para>
/// <para><b>Source:</b> [FAO56] equations 15 and 16; the coefficients seen in [PYETO]. Wet bulb above 0 °C; for an ice bulb see
/// <see cref="WmoPsychrometer"/>.</para>
/// <para><b>Error:</b> the coefficient decides: bulbs of 25.6 and 19.5 °C read as aspirated instead of unventilated overstate e by 0.29 kPa.
/// <b>Check value:</b> 25.6/19.5 °C at 87.9 kPa, aspirated: 1.91 kPa ([FAO56] example 4).</para>
/// </remarks>
public static class Psychrometer
{
    /// <summary>Psychrometer coefficient. [1/K]</summary>
    /// <param name="ventilation">How the air moves past the bulb.</param>
    public static double CoefficientPerK(BulbVentilation ventilation) => ventilation switch
    {
        BulbVentilation.Aspirated => 0.000662,
        BulbVentilation.Natural => 0.000800,
        BulbVentilation.Unventilated => 0.001200,
        _ => throw new ArgumentOutOfRangeException(nameof(ventilation), ventilation, "No such ventilation."),
    };

    /// <summary>Vapour pressure from two bulbs. [kPa]</summary>
    /// <param name="temperature">Dry bulb, -100 to 100. [°C]</param>
    /// <param name="wetBulb">Wet bulb, 0 up to the dry bulb. [°C]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="ventilation">How the air moves past the bulb.</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the bulbs would need air drier than dry.</exception>
    public static KiloPascal VapourPressure(
        Celsius temperature, Celsius wetBulb, KiloPascal airPressure, BulbVentilation ventilation, SaturationCurve? curve = null) =>
        VapourPressure(temperature, wetBulb, airPressure, CoefficientPerK(ventilation), curve);

    /// <summary>Vapour pressure from two bulbs with the instrument's own coefficient. [kPa]</summary>
    /// <param name="temperature">Dry bulb, -100 to 100. [°C]</param>
    /// <param name="wetBulb">Wet bulb, 0 up to the dry bulb. [°C]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="coefficientPerK">Psychrometer coefficient, 0.0005 to 0.002. [1/K]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the bulbs would need air drier than dry.</exception>
    public static KiloPascal VapourPressure(
        Celsius temperature, Celsius wetBulb, KiloPascal airPressure, double coefficientPerK, SaturationCurve? curve = null)
    {
        double t = Limits.Temperature(temperature);
        double tw = Guard.Within(wetBulb.Value, 0, double.IsNaN(t) ? Limits.HighestTemperatureC : t, "°C", nameof(wetBulb));
        double coefficient = Guard.Within(coefficientPerK, 0.0005, 0.002, "1/K");
        double e = Psychrometrics.VapourPressure.CurveOr(curve).VapourPressureKPa(tw)
            - (coefficient * Limits.AirPressure(airPressure) * (t - tw));
        return new(Guard.Within(e, 0, Limits.HighestVapourPressureKPa, "kPa (vapour pressure of the two bulbs)", nameof(wetBulb)));
    }

    /// <summary>Relative humidity from two bulbs. [%]</summary>
    /// <param name="temperature">Dry bulb, -100 to 100. [°C]</param>
    /// <param name="wetBulb">Wet bulb, 0 up to the dry bulb. [°C]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="ventilation">How the air moves past the bulb.</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the bulbs would need air drier than dry.</exception>
    public static RelativeHumidity RelativeHumidity(
        Celsius temperature, Celsius wetBulb, KiloPascal airPressure, BulbVentilation ventilation, SaturationCurve? curve = null) =>
        RelativeHumidityFrom.VapourPressure(
            temperature, VapourPressure(temperature, wetBulb, airPressure, ventilation, curve), curve);

    /// <summary>Psychrometric constant of an energy balance. [kPa/K]</summary>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is impossible.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>0.000665 p</c>. <b>Source:</b> [FAO56] eq. 8 (latent heat 2.45 MJ/kg, that of 20 °C; 2 % off at 0 and 40 °C, from memory).
    /// <b>Check value:</b> 81.8 kPa gives 0.054 kPa/K ([FAO56] example 2).
    /// </remarks>
    public static KiloPascalPerKelvin ConstantFao56(KiloPascal airPressure) => new(0.000665 * Limits.AirPressure(airPressure));
}
