using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Gridding;

/// <summary>
/// Two exports with the same channel and sensor name are one series in time, for example when the computer was changed: the source
/// that rules (<see cref="SeriesList"/>) comes first, the others fill step by step what it lacks or what failed its checks.
/// Each source stays as it is in its own column; the joined one is a column of its own.
/// </summary>
/// <remarks>Valves and fog lines are left out: waterings are read from each source's own stamps.</remarks>
internal static class JoinedSources
{
    /// <summary>Joins every channel and sensor that has several sources, and says so at each.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        HousePeriod joined = period;
        foreach (var group in period.Series.Where(s => s.Channel.Name is not ("valve" or "fogLine")).GroupBy(s => (s.Channel.Name, s.Sensor)))
        {
            Series[] sources = [.. group];
            joined = sources.Length > 1 ? Join(joined, sources) : joined;
        }

        return joined with
        {
            Temperature = Of(joined, joined.Temperature),
            Humidity = Of(joined, joined.Humidity),
            Leaf = Of(joined, joined.Leaf),
        };
    }

    /// <summary>The joined series that a source is part of, or the source itself when it stands alone.</summary>
    public static Series? Of(HousePeriod period, Series? source)
        => source is not null && period.Frame.Has(KeyOf(source)) ? source with { Key = KeyOf(source) } : source;

    /// <summary>Whether a source is one of those behind a series.</summary>
    public static bool IsBehind(Series source, Series? series)
        => series is not null && source.Channel.Name == series.Channel.Name && source.Sensor == series.Sensor;

    private static ColumnKey KeyOf(Series source) => new($"joined:{source.Channel.Name}", source.Sensor);

    private static HousePeriod Join(HousePeriod period, Series[] sources)
    {
        Frame frame = period.Frame;
        ImmutableArray<double>[] from = [.. sources.Select(s => frame.Values(s.Key))];
        ImmutableArray<QualityFlag>[] marks = [.. sources.Select(s => frame.Flags(s.Key))];
        double[] values = new double[frame.Axis.Count];
        QualityFlag[] flags = new QualityFlag[values.Length];
        int[] taken = new int[sources.Length];
        for (int i = 0; i < values.Length; i++)
        {
            int source = Array.FindIndex(marks, m => Quality.IsUsed(m[i]));
            taken[Math.Max(0, source)] += source >= 0 && i >= period.FirstStep ? 1 : 0;
            bool failed = source < 0 && marks.Any(m => m[i] == QualityFlag.Fail);
            flags[i] = source >= 0 ? marks[source][i] : failed ? QualityFlag.Fail : QualityFlag.Missing;
            values[i] = source >= 0 ? from[source][i] : double.NaN;
        }

        return period with
        {
            Frame = frame.With(KeyOf(sources[0]), ImmutableCollectionsMarshal.AsImmutableArray(values), ImmutableCollectionsMarshal.AsImmutableArray(flags)),
            Notes = Notes(period.Notes, sources, taken),
        };
    }

    private static SensorNotes Notes(SensorNotes notes, Series[] sources, int[] taken)
    {
        for (int i = 1; i < sources.Length; i++)
        {
            if (taken[i] > 0)
            {
                notes = notes.With(sources[0].Key, Phrase.Of($"{Say.Count(taken[i], "step")} filled in from export \"{sources[i].Source}\"."));
            }

            notes = notes.With(sources[i].Key, Phrase.Of($"Used where export \"{sources[0].Source}\" has nothing usable: {Say.Count(taken[i], "step")}."));
        }

        return notes;
    }
}
