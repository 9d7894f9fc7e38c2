using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>What the checks found in a series during the period, in a few words each: the same tests as its flags, told apart.</summary>
internal static class FaultKinds
{
    public static IEnumerable<string> Of(HousePeriod period, Series series)
    {
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        SeriesFlags flags = SeriesChecks.Flags(values.AsSpan(), series.Channel, period.Frame.Axis.Step);
        int first = period.FirstStep;
        bool zeros = BothZero.Concerns(period, series) && BothZero.Steps(period, series).AsSpan()[first..].Contains(true);
        if (zeros)
        {
            yield return "values are 0 as from an instrument without power";
        }

        if (!zeros && values.Skip(first).Any(v => v < series.Channel.SuspectLow || v > series.Channel.SuspectHigh))
        {
            yield return "values lie outside the usual or possible range";
        }

        if (flags.Flat.Skip(first).Any(IsFound))
        {
            yield return "values stood still";
        }

        if (flags.Spike.Skip(first).Any(IsFound))
        {
            yield return "values jumped";
        }
    }

    private static bool IsFound(QualityFlag flag) => flag is QualityFlag.Suspect or QualityFlag.Fail;
}
