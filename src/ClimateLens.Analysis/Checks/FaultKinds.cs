using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// What the checks found in a series during the period, in a few words each. Another sensor that says otherwise is told by
/// <see cref="SensorPair"/>.
/// </summary>
internal static class FaultKinds
{
    public static IEnumerable<string> Of(HousePeriod period, Series series)
    {
        SeriesFlags flags = period.Checks[series.Key];
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        int[] steps = [.. Enumerable.Range(period.FirstStep, values.Length - period.FirstStep)];
        bool IsFull(int i) => series.Channel.Quantity == Quantity.RelativeHumidity && values[i] >= SeriesChecks.SaturatedPct;
        bool Stood(int i) => flags.Found(QualityCheck.FlatLine, i);
        bool Hardly(int i) => flags.Found(QualityCheck.AttenuatedSignal, i);
        (Func<int, bool> Is, string Words)[] kinds =
        [
            (i => flags.Found(QualityCheck.Zero, i), Phrase.Of("values are 0 as from an instrument without power")),
            (i => flags.Found(QualityCheck.GrossRange, i), Phrase.Of("values lie outside the usual or possible range")),
            (i => flags.Found(QualityCheck.UnitChange, i), Phrase.Of("their unit seems to change")),
            (i => Stood(i) && !IsFull(i), Phrase.Of("values stood still")),
            (i => (Stood(i) || Hardly(i)) && IsFull(i), Phrase.Of($"values stayed at or above {Say.Number(SeriesChecks.SaturatedPct)} % (condensing air or a saturated sensor)")),
            (i => Hardly(i) && !Stood(i) && !IsFull(i), Phrase.Of("values hardly moved for a day")),
            (i => flags.Found(QualityCheck.Spike, i) || flags.Found(QualityCheck.RateOfChange, i), Phrase.Of("values jumped")),
            (i => flags.Found(QualityCheck.WetOverDry, i), Phrase.Of("values lie above the air temperature")),
        ];
        return kinds.Where(kind => steps.Any(kind.Is)).Select(kind => kind.Words);
    }
}
