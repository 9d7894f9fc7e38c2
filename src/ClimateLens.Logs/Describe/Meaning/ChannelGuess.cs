using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>What a column seems to be.</summary>
/// <param name="Channels">The channel; several where they are about as likely; none where the column is not used.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why; for a column that is not used: what it is.</param>
internal sealed record ChannelGuess(ImmutableArray<string> Channels, Sureness Sureness, string Evidence)
{
    /// <summary>A name that tells the sensor from others of its channel, or empty.</summary>
    public string Sensor { get; init; } = "";

    /// <summary>Whether the column is left out.</summary>
    public bool IsUnused => Channels.IsEmpty;

    /// <summary>A column that its words name.</summary>
    public static ChannelGuess Is(string channel, HeaderText header, Sureness sureness = Sureness.Sure) => new([channel], sureness, Said(header));

    /// <summary>A column that may be one of several.</summary>
    public static ChannelGuess Either(string why, params string[] channels) => new([.. channels], Sureness.Unsure, why);

    /// <summary>A column that no channel takes.</summary>
    public static ChannelGuess Unused(string what) => new([], Sureness.Sure, what);

    private static string Said(HeaderText header)
        => string.Join(", ", header.Words.Where(w => w.Idea is not (Idea.House or Idea.Number or Idea.Position)).Select(w => $"{w.Word}: {IdeaNames.Of(w.Idea)}").Distinct());
}
