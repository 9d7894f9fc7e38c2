using System.Collections.Immutable;
using ClimateLens.Nursery.Clock;
using NodaTime;

namespace ClimateLens.Nursery.Imports;

/// <summary>What the import found in one file, beside the counts of <see cref="ImportSheet"/>.</summary>
public sealed record ImportDetails
{
    /// <summary>How the text was cut into fields.</summary>
    public required ImportDialect Dialect { get; init; }

    /// <summary>Formats that times were read by, with the rows that each took.</summary>
    public required ImmutableArray<TimeFormatCount> TimeFormats { get; init; }

    /// <summary>Columns of the file that the nursery file takes nothing from, in file order, a bounded number of them.</summary>
    public required ImmutableArray<string> UnusedColumns { get; init; }

    /// <summary>How many there are.</summary>
    public required int UnusedColumnCount { get; init; }

    /// <summary>Why rows and values were set aside, in the order of their codes.</summary>
    public required ImmutableArray<SetAsideReason> Reasons { get; init; }

    /// <summary>Usual distance of two rows; null for records and for fewer than two rows. [s]</summary>
    public required int? StepSeconds { get; init; }

    /// <summary>Share of the distances that are so long, to a minute or a quarter of the step. [1]</summary>
    public required double? StepShare { get; init; }

    /// <summary>Distances of more than one and a half steps; null without a step.</summary>
    public required FileGaps? Gaps { get; init; }

    /// <summary>Each channel of the file; empty for records.</summary>
    public required ImmutableArray<ChannelSummary> Channels { get; init; }

    /// <summary>The file's clock against the sun; null for records.</summary>
    public required ClockCheck? Clock { get; init; }
}

/// <summary>How a file was cut into fields.</summary>
/// <param name="Encoding">Encoding that it was read in.</param>
/// <param name="Delimiter">Between fields.</param>
/// <param name="QuoteChar">Around texts.</param>
/// <param name="DecimalChar">Decimal mark.</param>
/// <param name="GroupChar">Mark between thousands; empty for none.</param>
/// <param name="HeaderRow">Row of the names; 0 for none.</param>
public sealed record ImportDialect(string Encoding, string Delimiter, string QuoteChar, string DecimalChar, string GroupChar, int HeaderRow);

/// <summary>Rows read by one time format.</summary>
/// <param name="Format">As in the nursery file.</param>
/// <param name="Rows">Rows.</param>
public sealed record TimeFormatCount(string Format, int Rows);

/// <summary>What a reason took away.</summary>
public enum SetAsideKind
{
    /// <summary>A whole row, one of those that <see cref="ImportSheet.SetAside"/> counts.</summary>
    Row,

    /// <summary>A cell, while its row stands.</summary>
    Cell,

    /// <summary>Older values of the store, which a row of this file overruled.</summary>
    Overruled,
}

/// <summary>Rows or cells set aside for one reason.</summary>
/// <param name="Code">Code as in docs/problems.md.</param>
/// <param name="Kind">What it took away.</param>
/// <param name="Count">How many.</param>
/// <param name="Lines">Lines of the first of them, at most <see cref="MostLines"/>.</param>
public sealed record SetAsideReason(string Code, SetAsideKind Kind, int Count, ImmutableArray<int> Lines)
{
    /// <summary>Lines kept for a reason; all stand in the set-aside file.</summary>
    public const int MostLines = 20;
}

/// <summary>Distances of more than one and a half steps.</summary>
/// <param name="Count">How many.</param>
/// <param name="MissingHours">Time in them beyond one step each. [h]</param>
/// <param name="Longest">The longest, at most <see cref="MostListed"/>, in time order.</param>
public sealed record FileGaps(int Count, double MissingHours, ImmutableArray<FileGap> Longest)
{
    /// <summary>Gaps listed.</summary>
    public const int MostListed = 10;
}

/// <summary>Two neighbouring stamps that lie far apart.</summary>
/// <param name="After">Last stamp before.</param>
/// <param name="Before">First stamp after.</param>
public sealed record FileGap(Instant After, Instant Before);

/// <summary>The values of one channel of a file, one row a time.</summary>
/// <param name="Channel">Channel name.</param>
/// <param name="Sensor">Sensor name; empty for the only one.</param>
/// <param name="Count">Values.</param>
/// <param name="MissingShare">Share of the rows without a value. [1]</param>
/// <param name="Min">Smallest value; null without any. [SI unit of the channel]</param>
/// <param name="Median">Median: of all values of up to 4,096 rows, else of some 2,048 to 4,096 rows drawn evenly. [SI unit of the channel]</param>
/// <param name="Max">Largest value. [SI unit of the channel]</param>
public sealed record ChannelSummary(string Channel, string Sensor, int Count, double MissingShare, double? Min, double? Median, double? Max);
