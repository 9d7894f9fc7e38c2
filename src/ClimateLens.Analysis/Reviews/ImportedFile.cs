using System.Collections.Immutable;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>A file behind a review and what the import found in it. Rows read = accepted + set aside + duplicates + blank.</summary>
/// <param name="File">File, relative to the nursery file where it lies beneath it.</param>
/// <param name="House">House of its export, or "nursery".</param>
/// <param name="Source">Export name.</param>
/// <param name="RowsRead">Data rows seen.</param>
/// <param name="Accepted">Rows in the store.</param>
/// <param name="SetAside">Rows that could not be read.</param>
/// <param name="Duplicates">Rows that said what the store already held.</param>
/// <param name="Blank">Empty rows.</param>
/// <param name="CellsNotRead">Values of accepted rows that could not be read.</param>
/// <param name="Conflicts">Rows whose stamp the store held with other values.</param>
/// <param name="First">First accepted stamp, or null.</param>
/// <param name="Last">Last accepted stamp, or null.</param>
/// <param name="Found">What else was found, or null where the store has lost it.</param>
public sealed record ImportedFile(
    string File,
    string House,
    string Source,
    int RowsRead,
    int Accepted,
    int SetAside,
    int Duplicates,
    int Blank,
    int CellsNotRead,
    int Conflicts,
    OffsetDateTime? First,
    OffsetDateTime? Last,
    FileFindings? Found);

/// <summary>What the import found in a file.</summary>
/// <param name="Reasons">Why rows and values were set aside.</param>
/// <param name="StepSeconds">Usual distance of two rows, or null. [s]</param>
/// <param name="StepShare">Share of the distances that are so long. [1]</param>
/// <param name="GapCount">Distances of more than one and a half steps; null without a step.</param>
/// <param name="GapHours">Time in them beyond one step each. [h]</param>
/// <param name="LongestGaps">The longest of them, in time order.</param>
/// <param name="Channels">Each channel.</param>
/// <param name="TimeFormats">Formats that times were read by.</param>
/// <param name="UnusedColumns">Columns that nothing was taken from, the first of them.</param>
/// <param name="UnusedColumnCount">How many there are.</param>
/// <param name="Dialect">How the text was cut.</param>
/// <param name="Clock">The file's clock against the sun; null for records.</param>
public sealed record FileFindings(
    ImmutableArray<SetAsideReason> Reasons,
    int? StepSeconds,
    double? StepShare,
    int? GapCount,
    double? GapHours,
    ImmutableArray<FoundGap> LongestGaps,
    ImmutableArray<ChannelSummary> Channels,
    ImmutableArray<TimeFormatCount> TimeFormats,
    ImmutableArray<string> UnusedColumns,
    int UnusedColumnCount,
    ImportDialect Dialect,
    ClockCheck? Clock);

/// <summary>Two neighbouring stamps of a file that lie far apart.</summary>
/// <param name="After">Last stamp before.</param>
/// <param name="Before">First stamp after.</param>
/// <param name="Hours">Distance. [h]</param>
public sealed record FoundGap(OffsetDateTime After, OffsetDateTime Before, double Hours);
