namespace ClimateLens.Science.Psychrometrics;

public static partial class MoistAirColumns
{
    /// <summary>Humidity deficit, 0 or more. [g/m³]</summary>
    /// <param name="temperatureC">Air temperature, -100 to 100. [°C]</param>
    /// <param name="relativeHumidityPct">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="resultGm3">Receives the vapour that the air can still take up. [g/m³]</param>
    public static void HumidityDeficitGm3(
        ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> relativeHumidityPct, Span<double> resultGm3)
    {
        VapourPressureDeficitKPa(temperatureC, relativeHumidityPct, resultGm3);
        ToDensity(temperatureC, resultGm3);
    }

    /// <summary>Vapour-pressure deficit from leaf to air; negative where water condenses on the leaf. [kPa]</summary>
    /// <param name="leafC">Leaf temperature, -100 to 100. [°C]</param>
    /// <param name="vapourPressureKPa">Vapour pressure of the air, 0 to 105. [kPa]</param>
    /// <param name="resultKPa">Receives the deficit. [kPa]</param>
    public static void LeafToAirDeficitKPa(
        ReadOnlySpan<double> leafC, ReadOnlySpan<double> vapourPressureKPa, Span<double> resultKPa)
    {
        Check(leafC, vapourPressureKPa, resultKPa);
        SaturationVapourPressureKPa(leafC, resultKPa);
        for (int i = 0; i < resultKPa.Length; i++)
        {
            double e = vapourPressureKPa[i];
            resultKPa[i] = e is >= 0 and <= Limits.HighestVapourPressureKPa ? resultKPa[i] - e : double.NaN;
        }
    }

    /// <summary>Relative humidity over water from the dew point; NaN where the dew point is above the air temperature. [%]</summary>
    /// <param name="temperatureC">Air temperature, -100 to 100. [°C]</param>
    /// <param name="dewPointC">Dew point, -100 up to the air temperature. [°C]</param>
    /// <param name="resultPct">Receives the relative humidity. [%]</param>
    public static void RelativeHumidityPct(
        ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> dewPointC, Span<double> resultPct)
    {
        Check(temperatureC, dewPointC, resultPct);
        SaturationVapourPressureKPa(dewPointC, resultPct);
        for (int i = 0; i < resultPct.Length; i++)
        {
            double t = temperatureC[i];
            resultPct[i] = Limits.IsTemperature(t) && dewPointC[i] <= t
                ? 100 * Math.Min(1, resultPct[i] / Form.VapourPressureKPa(t)) // Min: the two exponentials may differ in the last bit
                : double.NaN;
        }
    }
}
