using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>
/// Holds columns of one file against each other: from temperature and relative humidity follow deficit and dew point, by the formulas
/// of ClimateLens.Science, and only the right units agree.
/// </summary>
internal static class AirCheck
{
    private const int FewestRows = 12;
    private const double LeastDeficitKPa = 0.15;
    private const double WidestRatio = 1.3;
    private const double WidestMedian = 1.1;
    private const double WidestHumidity = 8;

    /// <summary>Units of a deficit, with how many of them make one of what is worked out.</summary>
    private static readonly (string Code, double Factor, bool Density)[] DeficitUnits =
        [("kPa", 1, false), ("hPa", 10, false), ("Pa", 1000, false), ("g/m3", 1, true)];

    /// <summary>The unit in which a logged deficit agrees with temperature and humidity; null where none or several do.</summary>
    /// <param name="temperatureC">Air temperature by row. [°C]</param>
    /// <param name="humidityPct">Relative humidity by row. [%]</param>
    /// <param name="deficit">The deficit by row, in the file's unit.</param>
    public static string? DeficitUnit(double[] temperatureC, double[] humidityPct, double[] deficit)
    {
        string[] fitting = [.. DeficitUnits.Where(u => Agrees(temperatureC, humidityPct, deficit, u.Factor, u.Density)).Select(u => u.Code)];
        return fitting.Length == 1 ? fitting[0] : null;
    }

    /// <summary>Whether humidity worked out from temperature and dew point agrees with the logged one; null where too few rows tell.</summary>
    /// <param name="temperatureC">Air temperature by row. [°C]</param>
    /// <param name="dewPointC">Dew point by row. [°C]</param>
    /// <param name="humidityPct">Relative humidity by row. [%]</param>
    public static bool? DewPointAgrees(double[] temperatureC, double[] dewPointC, double[] humidityPct)
    {
        var parts = new List<double>();
        int impossible = 0;
        for (int i = 0; i < temperatureC.Length; i++)
        {
            (double t, double d, double h) = (temperatureC[i], dewPointC[i], humidityPct[i]);
            if (IsAir(t, h) && d is > -60 and < 60)
            {
                impossible += d > t + 0.5 ? 1 : 0;
                if (d <= t)
                {
                    parts.Add(Math.Abs(RelativeHumidityFrom.DewPoint(new Celsius(t), new Celsius(d)).Percent - h));
                }
            }
        }

        parts.Sort();
        return parts.Count + impossible < FewestRows ? null : impossible < parts.Count / 10 && parts[parts.Count / 2] < WidestHumidity / 2 && parts[parts.Count * 4 / 5] < WidestHumidity;
    }

    private static bool Agrees(double[] temperatureC, double[] humidityPct, double[] deficit, double factor, bool density)
    {
        var ratios = new List<double>();
        for (int i = 0; i < deficit.Length; i++)
        {
            if (!IsAir(temperatureC[i], humidityPct[i]) || double.IsNaN(deficit[i]))
            {
                continue;
            }

            var t = new Celsius(temperatureC[i]);
            var h = new RelativeHumidity(humidityPct[i]);
            double kPa = VapourPressureDeficit.OfAir(t, h).Value;
            if (kPa >= LeastDeficitKPa)
            {
                ratios.Add(Math.Max(deficit[i], 1e-9) / (factor * (density ? VapourDensity.Deficit(t, h).Value : kPa)));
            }
        }

        ratios.Sort();
        return ratios.Count >= FewestRows
            && ratios[ratios.Count / 2] is > 1 / WidestMedian and < WidestMedian
            && ratios[ratios.Count / 10] > 1 / WidestRatio && ratios[ratios.Count * 9 / 10] < WidestRatio;
    }

    private static bool IsAir(double temperatureC, double humidityPct) => temperatureC is > -40 and < 70 && humidityPct is > 1 and <= 100;
}
