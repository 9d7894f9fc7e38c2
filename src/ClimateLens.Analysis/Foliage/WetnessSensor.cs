using ClimateLens.Analysis.Stages;

namespace ClimateLens.Analysis.Foliage;

/// <summary>A leaf-wetness sensor as wet and dry steps.</summary>
internal static class WetnessSensor
{
    /// <summary>Wet from half of the sensor's scale on. Choice of this project, no source: makes differ, and so does where the sensor hangs. [%]</summary>
    public const double WetFromPct = 50;

    /// <summary>1 wet, 0 dry, NaN where the sensor does not tell; null where there is none.</summary>
    public static double[]? Of(HousePeriod period)
    {
        if (UsedSeries.Of(period, "leafWetness") is not double[] pct)
        {
            return null;
        }

        for (int i = 0; i < pct.Length; i++)
        {
            pct[i] = double.IsNaN(pct[i]) ? double.NaN : pct[i] >= WetFromPct ? 1 : 0;
        }

        return pct;
    }
}
