using System.Collections.Immutable;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Stages;

/// <summary>Plain sentences about each series, in the order in which the stages wrote them. Immutable.</summary>
public sealed class SensorNotes
{
    private readonly ImmutableDictionary<ColumnKey, ImmutableArray<string>> _byKey;

    private SensorNotes(ImmutableDictionary<ColumnKey, ImmutableArray<string>> byKey) => _byKey = byKey;

    /// <summary>No notes.</summary>
    public static SensorNotes None { get; } = new(ImmutableDictionary<ColumnKey, ImmutableArray<string>>.Empty);

    /// <summary>The notes of a series; empty when there are none.</summary>
    public ImmutableArray<string> Of(ColumnKey key) => _byKey.TryGetValue(key, out ImmutableArray<string> notes) ? notes : [];

    /// <summary>These notes and one more.</summary>
    public SensorNotes With(ColumnKey key, string note) => new(_byKey.SetItem(key, Of(key).Add(note)));
}
