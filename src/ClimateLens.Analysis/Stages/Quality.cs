using System.Collections.Immutable;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Nursery.Channels.Changes;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Second stage: a QARTOD flag for every value. Failed and missing values drop out of the science, suspect ones are used and
/// counted. Values stay as they are. Method, limits and sources: docs/science/quality.md.
/// </summary>
public static class Quality
{
    /// <summary>Flags every series of a house period.</summary>
    public static HousePeriod Check(HousePeriod period)
    {
        HousePeriod flagged = period;
        foreach (Series series in period.Series)
        {
            IReadOnlyList<FoundUnitChange> changes = UnitShift.Find(period, series);
            SeriesFlags flags = OfSeries(period, series, changes);
            flagged = flagged with
            {
                Checks = flagged.Checks.SetItem(series.Key, flags),
                Frame = flagged.Frame.WithFlags(series.Key, [.. flags.RolledUp]),
                Notes = QualityNotes.On(period, series, flags).Concat(UnitShift.Notes(period, series, changes)).Aggregate(flagged.Notes, (sofar, note) => sofar.With(series.Key, note)),
            };
        }

        return UnitHints.AddNotes(SensorPair.Add(JoinedSources.Add(WetOverDry.Add(flagged))));
    }

    /// <summary>The checks that look at one series, its export and nothing else.</summary>
    private static SeriesFlags OfSeries(HousePeriod period, Series series, IReadOnlyList<FoundUnitChange> changes)
    {
        bool[] zeros = Zeros.Steps(period, series);
        double[] values = Zeros.Without(zeros, period.Frame.Values(series.Key).AsSpan());
        QualityFlag[] shifted = changes.Count == 0 ? [] : UnitShift.Flags(period, series, changes);
        SeriesFlags flags = SeriesChecks.Flags(values, series.Channel, period.Frame.Axis.Step, [.. shifted.Select(f => f == QualityFlag.Suspect)]);
        flags = changes.Count == 0 ? flags : flags.With(QualityCheck.UnitChange, shifted);
        flags = zeros.Contains(true) ? flags.With(QualityCheck.Zero, Zeros.Flags(zeros)) : flags;
        return period.OverGap.TryGetValue(series.Key, out bool[]? overGap)
            ? flags.With(QualityCheck.OverGap, [.. overGap.Select(over => over ? QualityFlag.Suspect : QualityFlag.Missing)])
            : flags;
    }

    /// <summary>Whether a flagged value takes part in the science.</summary>
    public static bool IsUsed(QualityFlag flag) => flag is not (QualityFlag.Fail or QualityFlag.Missing);

    /// <summary>A column with NaN where the value is not used.</summary>
    public static double[] Used(Frame frame, ColumnKey key)
    {
        ImmutableArray<double> values = frame.Values(key);
        ImmutableArray<QualityFlag> flags = frame.Flags(key);
        double[] used = new double[values.Length];
        for (int i = 0; i < used.Length; i++)
        {
            used[i] = IsUsed(flags[i]) ? values[i] : double.NaN;
        }

        return used;
    }
}
