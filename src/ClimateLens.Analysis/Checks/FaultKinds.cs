using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>What the checks found in a series during the period, in a few words each: the same tests as its flags, told apart.</summary>
internal static class FaultKinds
{
    public static IEnumerable<string> Of(HousePeriod period, Series series)
    {
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        bool[] zeros = BothZero.Steps(period, series);
        SeriesFlags flags = SeriesChecks.Flags(BothZero.Without(zeros, values.AsSpan()), series.Channel, period.Frame.Axis.Step);
        int first = period.FirstStep;
        if (zeros.Skip(first).Contains(true))
        {
            yield return "values are 0 as from an instrument without power";
        }

        if (values.Where((v, i) => i >= first && !zeros[i] && (v < series.Channel.SuspectLow || v > series.Channel.SuspectHigh)).Any())
        {
            yield return "values lie outside the usual or possible range";
        }

        bool IsFull(int i) => series.Channel.Quantity == Quantity.RelativeHumidity && values[i] >= SeriesChecks.SaturatedPct;
        if (flags.Flat.Where((f, i) => i >= first && IsFound(f) && !IsFull(i)).Any())
        {
            yield return "values stood still";
        }

        if (flags.Flat.Where((f, i) => i >= first && IsFound(f) && IsFull(i)).Any())
        {
            yield return $"values stayed at or above {Say.Number(SeriesChecks.SaturatedPct)} % (condensing air or a saturated sensor)";
        }

        if (flags.Spike.Skip(first).Any(IsFound))
        {
            yield return "values jumped";
        }
    }

    private static bool IsFound(QualityFlag flag) => flag is QualityFlag.Suspect or QualityFlag.Fail;
}
