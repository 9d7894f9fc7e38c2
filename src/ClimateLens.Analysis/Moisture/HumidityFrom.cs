using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Analysis.Moisture;

/// <summary>Relative humidity from other measures of moisture, as columns. NaN in or impossible gives NaN.</summary>
/// <remarks>
/// <para><b>Formulas</b> with saturation es and vapour pressure e: from VPD <c>100 (1 - VPD/es)</c>; from dew point
/// <c>100 es(td)/es(t)</c>; from humidity deficit d <c>100 (1 - d/d₀)</c>, d₀ that of perfectly dry air; from the wet bulb
/// <c>e = es(tw) - a p (t - tw)</c> with the coefficient of a ventilated bulb and the pressure of the nursery's elevation.</para>
/// <para><b>Source:</b> definitions; <see cref="Psychrometer"/> [FAO56] eq. 15 and 16. <b>Range:</b> bulb above 0 °C.
/// <b>Error:</b> an unventilated bulb read so overstates e by 0.29 kPa at 25.6/19.5 °C.</para>
/// </remarks>
internal static class HumidityFrom
{
    /// <summary>Derives humidity from a column of the named channel. [%]</summary>
    public static void Channel(string channel, double[] temperatureC, double[] measure, double elevationM, double[] resultPct)
    {
        double[] saturation = new double[temperatureC.Length];
        MoistAirColumns.SaturationVapourPressureKPa(temperatureC, saturation);
        double[] other = new double[temperatureC.Length];
        if (channel is "dewPoint" or "wetBulbTemperature")
        {
            MoistAirColumns.SaturationVapourPressureKPa(measure, other);
        }

        double[] driest = new double[temperatureC.Length];
        MoistAirColumns.HumidityDeficitGm3(temperatureC, new double[temperatureC.Length], driest);
        double bulbKPaPerK = Psychrometer.CoefficientPerK(BulbVentilation.Aspirated) * AirPressure.AtElevation(new Metre(elevationM)).Value;
        for (int i = 0; i < resultPct.Length; i++)
        {
            double share = channel switch
            {
                "vapourPressureDeficit" => 1 - (measure[i] / saturation[i]),
                "dewPoint" => other[i] / saturation[i],
                "humidityDeficit" => 1 - (measure[i] / driest[i]),
                "wetBulbTemperature" => (other[i] - (bulbKPaPerK * (temperatureC[i] - measure[i]))) / saturation[i],
                _ => throw new ArgumentOutOfRangeException(nameof(channel), channel, "No humidity can be derived from it."),
            };
            resultPct[i] = share >= 0 ? Math.Min(100 * share, 100) : double.NaN;
        }
    }
}
