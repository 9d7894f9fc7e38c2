using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>What a column of a file, or some rows of a long one, seems to hold.</summary>
/// <param name="Facts">Its values.</param>
/// <param name="Channel">The guess of its channel.</param>
/// <param name="Unit">The guess of its unit; null where none is needed.</param>
internal sealed record ColumnFinding(ColumnFacts Facts, ChannelGuess Channel, UnitGuess? Unit)
{
    /// <summary>Fields and texts of the rows that it is read from; empty for every row.</summary>
    public ImmutableArray<(int Column, string Text)> Where { get; init; } = [];

    /// <summary>Name among others of its channel, or empty.</summary>
    public string Sensor { get; init; } = "";

    /// <summary>House that the column belongs to, or null.</summary>
    public string? House { get; init; }

    /// <summary>Whether it counts up and starts again.</summary>
    public bool IsCounter { get; init; }

    /// <summary>Whether zeros of it mean that there is no value.</summary>
    public bool ZeroIsMissing { get; init; }

    /// <summary>Whether the user is asked.</summary>
    public bool IsAsked => !Channel.IsUnused && (Channel.Sureness == Sureness.Unsure || Unit?.Sureness == Sureness.Unsure);
}
