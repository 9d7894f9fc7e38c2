using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// A logged dew point or wet bulb above the air temperature: neither can be, so one of the two sensors is wrong. Above the joint error of
/// the two the logged value is in doubt, above twice that it fails. The air temperature keeps its flag; which of the two is wrong the
/// data cannot tell.
/// </summary>
/// <remarks><para><b>Source:</b> definitions of dew point and wet bulb; joint error [GUM08] 5.1.2; twice it: choice of this project.</para></remarks>
internal static class WetOverDry
{
    /// <summary>Flags and notes every such series.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        HousePeriod checkedPeriod = period;
        foreach (Series wet in period.Series.Where(s => s.Channel.Name is "dewPoint" or "wetBulbTemperature"))
        {
            if (DryOf(period, wet) is Series dry)
            {
                checkedPeriod = Check(checkedPeriod, wet, dry);
            }
        }

        return checkedPeriod;
    }

    /// <summary>What two sensors may differ by without either being wrong. [K]</summary>
    private static double JointErrorK(HousePeriod period, Series wet, Series dry)
    {
        double first = SensorAccuracy.Of(period.Input.House, wet.Channel.Name, wet.Sensor).HalfWidth;
        double second = SensorAccuracy.Of(period.Input.House, dry.Channel.Name, dry.Sensor).HalfWidth;
        return Math.Sqrt((first * first) + (second * second));
    }

    private static HousePeriod Check(HousePeriod period, Series wet, Series dry)
    {
        double allowed = JointErrorK(period, wet, dry), highest = 0;
        ImmutableArray<double> above = period.Frame.Values(wet.Key);
        double[] air = Quality.Used(period.Frame, dry.Key);
        QualityFlag[] flags = new QualityFlag[above.Length];
        int doubtful = 0;
        for (int i = 0; i < flags.Length; i++)
        {
            double over = above[i] - air[i];
            flags[i] = over > 2 * allowed ? QualityFlag.Fail
                : over > allowed ? QualityFlag.Suspect
                : double.IsFinite(over) ? QualityFlag.Pass
                : QualityFlag.Missing;
            if (i >= period.FirstStep && over > allowed)
            {
                doubtful++;
                highest = Math.Max(highest, over);
            }
        }

        HousePeriod flagged = period.With(wet.Key, QualityCheck.WetOverDry, flags);
        return doubtful == 0 ? flagged : flagged with
        {
            Notes = flagged.Notes.With(wet.Key, Phrase.Of($"{Say.Count(doubtful, "step")} above the air temperature of \"{dry.Source}\", by up to {Say.Number(highest, 1)} K, which cannot be; the two may differ by {Say.Number(allowed, 1)} K. Above {Say.Number(2 * allowed, 1)} K not used.")),
        };
    }

    /// <summary>The air temperature beside it: of its export and sensor name, of its export, or of its house.</summary>
    private static Series? DryOf(HousePeriod period, Series wet)
    {
        Series[] air = [.. period.Series.Where(s => s.Channel.Name == "airTemperature" && s.House == wet.House)];
        return Array.Find(air, s => s.Source == wet.Source && s.Sensor == wet.Sensor) ?? Array.Find(air, s => s.Source == wet.Source) ?? air.FirstOrDefault();
    }
}
