using System.Collections.Immutable;
using ClimateLens.Nursery.Languages;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Stages;

/// <summary>Says of each export whose stamps stray that its readings were put to the steps that they were meant for.</summary>
internal static class StrayNotes
{
    /// <summary>Adds a note to the first series of each such export.</summary>
    public static SensorNotes AddTo(SensorNotes notes, ImmutableArray<ListedSeries> listed, IReadOnlyDictionary<ReadingBatch, GridSource> sources)
    {
        foreach (GridSource source in sources.Values.Where(s => s.StrayMicros > 0))
        {
            ListedSeries first = listed.First(s => ReferenceEquals(s.Batch, source.Batch));
            notes = notes.With(first.Series.Key, Phrase.Of($"The stamps of \"{source.Batch.Source}\" stray by up to {source.StrayMicros / 1e6:0.#} s around steps of {source.StepMicros / 6e7:0.##} min; each reading counts for the step that it was meant for."));
        }

        return notes;
    }
}
