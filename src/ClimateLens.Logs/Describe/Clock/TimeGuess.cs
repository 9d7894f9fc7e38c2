using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>How the time of a row reads.</summary>
/// <param name="Source">Where it stands.</param>
/// <param name="Formats">The format, or several between which the order of time decides.</param>
/// <param name="Sureness">How sure; unsure: <paramref name="Formats"/> are the candidates to ask about.</param>
/// <param name="Evidence">Why.</param>
/// <param name="Tally">The tally of the first format.</param>
internal sealed record TimeGuess(TimeSource Source, ImmutableArray<StampFormat> Formats, Sureness Sureness, string Evidence, StampTally Tally)
{
    /// <summary>Where the end of a row's interval stands, or null.</summary>
    public TimeSource? End { get; init; }

    /// <summary>Whether the stamps name no year.</summary>
    public bool IsYearless => Formats[0].Holds.HasFlag(StampHolds.Yearless);

    /// <summary>Whether a column is part of the time or of the end.</summary>
    public bool Has(int column) => Source.Has(column) || End?.Has(column) == true;

    /// <summary>Whether every stamp names its offset from UTC, or counts from an instant.</summary>
    public bool NamesOffset => Tally.Read > 0 && Tally.WithOffset >= Tally.Read;

    /// <summary>How the times follow each other as read.</summary>
    public OrderTally Order { get; init; } = Tally.Order;

    /// <summary>Share of the rows that the formats read.</summary>
    public double Share { get; init; }
}
