using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>The aspirated psychrometer of the World Meteorological Organization, with its enhancement factor of moist air.</summary>
/// <remarks>
/// <para>The one place where the enhancement factor f is not 1: it raises saturation over pure water to that in moist air. Its vapour
/// pressures are therefore 0.4 to 0.5 % above those of <see cref="Psychrometer"/>; relative humidity is within a point of theirs, the coefficients
/// being 1 % apart (WmoPsychrometerTests).</para>
/// <para><b>Formula:</b> <c>f = 1.0016 + 3.15e-6 p - 0.074/p</c>; water bulb <c>e' = f·ew(tw) - 6.53e-4(1 + 0.000944 tw)p(t - tw)</c>;
/// ice bulb <c>e' = f·ei(ti) - 5.75e-4 p(t - ti)</c>; <c>RH = 100 e'/(f·ew(t))</c>; p in hPa in the source, converted here.</para>
/// <para><b>Source:</b> [WMO8] annex 4.B; f seen in public code, the four psychrometer constants from memory. Curves:
/// <see cref="MagnusForm.Wmo8Water"/> and <see cref="MagnusForm.Wmo8Ice"/>. <b>Range:</b> aspirated 2.5 m/s or more, -45 to 60 °C.</para>
/// <para><b>Error:</b> the curve's 0.3 % in e'. <b>Check value:</b> 20/18 °C at 101.325 kPa: 1.93427 kPa, 82.53 % (computed from the formula).</para>
/// </remarks>
public static class WmoPsychrometer
{
    /// <summary>Enhancement factor: saturation in moist air to that over pure water. [1]</summary>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is impossible.</exception>
    public static double EnhancementFactor(KiloPascal airPressure)
    {
        double hectopascal = Limits.AirPressure(airPressure) * 10;
        return 1.0016 + (3.15e-6 * hectopascal) - (0.074 / hectopascal);
    }

    /// <summary>Vapour pressure of moist air from a bulb wet with liquid water. [kPa]</summary>
    /// <param name="temperature">Dry bulb, -100 to 100. [°C]</param>
    /// <param name="wetBulb">Wet bulb, up to the dry bulb. [°C]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the bulbs would need air drier than dry.</exception>
    public static KiloPascal VapourPressure(Celsius temperature, Celsius wetBulb, KiloPascal airPressure)
    {
        double tw = wetBulb.Value;
        return FromBulb(MagnusForm.Wmo8Water, temperature, wetBulb, airPressure, 6.53e-4 * (1 + (0.000944 * tw)));
    }

    /// <summary>Vapour pressure of moist air from a bulb covered with ice. [kPa]</summary>
    /// <param name="temperature">Dry bulb, -100 to 100. [°C]</param>
    /// <param name="iceBulb">Ice bulb, up to the dry bulb and to 0. [°C]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the bulbs would need air drier than dry.</exception>
    public static KiloPascal VapourPressureIceBulb(Celsius temperature, Celsius iceBulb, KiloPascal airPressure)
    {
        Guard.Within(iceBulb.Value, Limits.LowestTemperatureC, 0, "°C", nameof(iceBulb));
        return FromBulb(MagnusForm.Wmo8Ice, temperature, iceBulb, airPressure, 5.75e-4);
    }

    /// <summary>Relative humidity over water from a vapour pressure of this psychrometer. [%]</summary>
    /// <param name="temperature">Dry bulb, -100 to 100. [°C]</param>
    /// <param name="vapourPressure">Vapour pressure of moist air. [kPa]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the air would be supersaturated.</exception>
    public static RelativeHumidity RelativeHumidity(
        Celsius temperature, KiloPascal vapourPressure, KiloPascal airPressure) =>
        RelativeHumidityFrom.VapourPressure(
            temperature, new(vapourPressure.Value / EnhancementFactor(airPressure)), MagnusForm.Wmo8Water);

    private static KiloPascal FromBulb(
        MagnusForm curve, Celsius temperature, Celsius bulb, KiloPascal airPressure, double coefficientPerK)
    {
        double t = Limits.Temperature(temperature);
        double highest = double.IsNaN(t) ? Limits.HighestTemperatureC : t;
        double wet = Guard.Within(bulb.Value, Limits.LowestTemperatureC, highest, "°C", nameof(bulb));
        double e = (EnhancementFactor(airPressure) * curve.VapourPressureKPa(wet))
            - (coefficientPerK * airPressure.Value * (t - wet));
        return new(Guard.Within(e, 0, Limits.HighestVapourPressureKPa, "kPa (vapour pressure of the two bulbs)", nameof(bulb)));
    }
}
