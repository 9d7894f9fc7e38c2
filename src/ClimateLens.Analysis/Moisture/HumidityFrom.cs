using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Analysis.Moisture;

/// <summary>Relative humidity from other measures of moisture, as columns. NaN in or impossible gives NaN.</summary>
/// <remarks>
/// <para><b>Formulas</b> with saturation es and vapour pressure e: from VPD <c>100 (1 - VPD/es)</c>; from dew point
/// <c>100 es(td)/es(t)</c>; from humidity deficit d <c>100 (1 - d (t + 273.15)/(2166.8 es))</c>; from the wet bulb
/// <c>e = es(tw) - 0.000662 p (t - tw)</c>.</para>
/// <para><b>Source:</b> definitions; psychrometer constant of a ventilated (5 m/s) bulb 0.000662 /K: Allen et al. 1998,
/// FAO Irrigation and Drainage Paper 56, eq. 15 and 16; pressure of the standard atmosphere, ibid. eq. 7. <b>Range:</b> bulb above
/// 0 °C. <b>Error:</b> an unventilated bulb read so over-states e (by 0.29 kPa at 25.6/19.5 °C, 87.9 kPa).</para>
/// </remarks>
internal static class HumidityFrom
{
    private const double PsychrometerPerK = 0.000662;

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

        double pressure = PressureKPa(elevationM);
        for (int i = 0; i < resultPct.Length; i++)
        {
            double share = channel switch
            {
                "vapourPressureDeficit" => 1 - (measure[i] / saturation[i]),
                "dewPoint" => other[i] / saturation[i],
                "humidityDeficit" => 1 - (measure[i] * (temperatureC[i] + 273.15) / (2166.8 * saturation[i])),
                "wetBulbTemperature" => (other[i] - (PsychrometerPerK * pressure * (temperatureC[i] - measure[i]))) / saturation[i],
                _ => throw new ArgumentOutOfRangeException(nameof(channel), channel, "No humidity can be derived from it."),
            };
            resultPct[i] = share >= 0 ? Math.Min(100 * share, 100) : double.NaN;
        }
    }

    private static double PressureKPa(double elevationM) => 101.3 * Math.Pow((293 - (0.0065 * elevationM)) / 293, 5.26);
}
