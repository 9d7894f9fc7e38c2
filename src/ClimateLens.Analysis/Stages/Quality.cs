using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Gridding;
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
        Frame frame = period.Frame;
        SensorNotes notes = period.Notes;
        foreach (Series series in period.Series)
        {
            ReadOnlySpan<double> values = frame.Values(series.Key).AsSpan();
            bool[] zeros = BothZero.Steps(period, series);
            bool concerned = BothZero.Concerns(period, series);
            SeriesFlags flags = SeriesChecks.Flags(concerned ? BothZero.Without(zeros, values) : values, series.Channel, frame.Axis.Step);
            if (concerned)
            {
                BothZero.Fail(zeros, flags.RolledUp);
            }

            frame = frame.WithFlags(series.Key, ImmutableCollectionsMarshal.AsImmutableArray(flags.RolledUp));
            notes = QualityNotes.On(period, series, flags, zeros).Aggregate(notes, (sofar, note) => sofar.With(series.Key, note));
        }

        return UnitHints.AddNotes(SensorPair.AddNotes(JoinedSources.Add(period with { Frame = frame, Notes = notes })));
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
