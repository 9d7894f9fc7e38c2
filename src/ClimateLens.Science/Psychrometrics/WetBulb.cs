using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Thermodynamic wet-bulb temperature: that of air brought to saturation by water evaporating into it.</summary>
/// <remarks>
/// <para><b>Formula:</b> energy balance of adiabatic saturation. Wet bulb t* from 0 °C up:
/// <c>W = [(2501 - 2.326 t*)Ws* - 1.006(t - t*)]/(2501 + 1.86 t - 4.186 t*)</c>; below, over ice:
/// <c>W = [(2830 - 0.24 t*)Ws* - 1.006(t - t*)]/(2830 + 1.86 t - 2.1 t*)</c>; Ws* saturated at t*. Solved by bisection to 1e-7 K.</para>
/// <para><b>Source:</b> [ASHRAE17] chapter 1, equations 33 and 35. <b>Error:</b> 0.03 K against published calculator values
/// (CheckRowTests) and against the same balance with Hyland-Wexler (MoistAirPropertyTests). A real wick reads higher where air moves little: see <see cref="BulbVentilation"/>.</para>
/// <para><b>Check value:</b> 7 °C, 61 %, 100 kPa give 3.927 °C [PSYLIB].</para>
/// </remarks>
public static class WetBulb
{
    /// <summary>Wet-bulb temperature, never above the air temperature. [°C]</summary>
    /// <param name="temperature">Air temperature, -50 to 60. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="airPressure">Air pressure, 50 to 120. [kPa]</param>
    /// <param name="waterCurve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <param name="iceCurve">Saturation curve over ice; Buck 1981 e_i2 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static Celsius FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, KiloPascal airPressure,
        SaturationCurve? waterCurve = null, SaturationCurve? iceCurve = null)
    {
        double t = Guard.Within(temperature.Value, -50, 60, "°C", nameof(temperature));
        double p = Guard.Within(airPressure.Value, 50, Limits.HighestPressureKPa, "kPa", nameof(airPressure));
        double target = HumidityRatio.FromRelativeHumidity(temperature, humidity, airPressure, waterCurve).Value;
        if (double.IsNaN(target))
        {
            return new(double.NaN);
        }

        double low = t - 60, high = t; // no air, however dry, has a wet bulb 60 K below its temperature
        while (high - low > 1e-7)
        {
            double middle = (low + high) / 2;
            bool tooDry = RatioAt(t, middle, p, waterCurve, iceCurve) < target;
            (low, high) = tooDry ? (middle, high) : (low, middle);
        }

        return new(high);
    }

    /// <summary>Humidity ratio from dry-bulb and thermodynamic wet-bulb temperature. [kg/kg dry air]</summary>
    /// <param name="temperature">Air temperature, -50 to 60. [°C]</param>
    /// <param name="wetBulb">Wet-bulb temperature, up to the air temperature and not below that of dry air. [°C]</param>
    /// <param name="airPressure">Air pressure, 50 to 120. [kPa]</param>
    /// <param name="waterCurve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <param name="iceCurve">Saturation curve over ice; Buck 1981 e_i2 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible, or the wet bulb would need air drier than dry.</exception>
    public static KilogramPerKilogram ToHumidityRatio(
        Celsius temperature, Celsius wetBulb, KiloPascal airPressure,
        SaturationCurve? waterCurve = null, SaturationCurve? iceCurve = null)
    {
        double t = Guard.Within(temperature.Value, -50, 60, "°C", nameof(temperature));
        double tw = Guard.Within(wetBulb.Value, -100, double.IsNaN(t) ? 60 : t, "°C", nameof(wetBulb));
        double p = Guard.Within(airPressure.Value, 50, Limits.HighestPressureKPa, "kPa", nameof(airPressure));
        double ratio = RatioAt(t, tw, p, waterCurve, iceCurve);
        return new(Guard.Within(ratio, 0, 1, "kg/kg (humidity ratio of the two bulbs)", nameof(wetBulb)));
    }

    private static double RatioAt(double t, double tw, double p, SaturationCurve? waterCurve, SaturationCurve? iceCurve)
    {
        SaturationCurve curve = tw < 0 ? iceCurve ?? SaturationCurve.Ice : VapourPressure.CurveOr(waterCurve);
        double e = curve.VapourPressureKPa(tw);
        double saturated = HumidityRatio.MolarMassRatio * e / (p - e);
        return tw < 0
            ? (((2830 - (0.24 * tw)) * saturated) - (1.006 * (t - tw))) / (2830 + (1.86 * t) - (2.1 * tw))
            : (((2501 - (2.326 * tw)) * saturated) - (1.006 * (t - tw))) / (2501 + (1.86 * t) - (4.186 * tw));
    }
}
