using System.Collections.Immutable;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery;

/// <summary>All that a review of one house period looks at. Holds no files and no clock.</summary>
/// <param name="Nursery">The nursery.</param>
/// <param name="House">The house.</param>
/// <param name="Period">The period under review, without its run-in.</param>
/// <param name="RunIn">Days before the period that are loaded for the models, as an interval that ends where the period starts.</param>
/// <param name="Batches">Readings of the house and of the whole nursery within run-in and period, by source.</param>
/// <param name="Records">Records of the house within run-in and period, in time order; plant widths, scouting, treatments and floors from a year before it on, pot checks from the start of the history on.</param>
/// <param name="Files">What the import knows of the files behind them.</param>
public sealed record HouseInput(
    NurserySettings Nursery,
    HouseSettings House,
    Interval Period,
    Interval RunIn,
    ImmutableArray<ReadingBatch> Batches,
    ImmutableArray<RecordRow> Records,
    ImmutableArray<ImportSheet> Files)
{
    /// <summary>
    /// Readings before the period that say how its sensors usually go together, by source; they reach further back than the run-in and
    /// hold its readings too. Empty where they were not asked for.
    /// </summary>
    public ImmutableArray<ReadingBatch> History { get; init; } = [];

    /// <summary>Waterings of the house within that time and before the run-in, in time order.</summary>
    public ImmutableArray<RecordRow> EarlierWaterings { get; init; } = [];

    /// <summary>
    /// Weeks before the period that are looked back at (<see cref="ScoutedWeeks"/>), oldest first, each as a review of its own would see it but without history. Empty where plants were never counted.
    /// </summary>
    public ImmutableArray<HouseInput> Earlier { get; init; } = [];

    /// <summary>Whether a source of the house itself, not only one of the whole nursery, has a stamp in the period.</summary>
    public bool HasReadings => Batches.Any(b => b.House == House.Id && b.UtcMicros.Any(t => Period.Contains(Instant.FromUnixTimeTicks((t * 10) - (b.StampSide == StampSide.IntervalEnd ? 1 : 0)))));
}

/// <summary>What became of one file. Always: rows read = accepted + set aside + duplicates + blank.</summary>
/// <param name="File">File as in <see cref="Problems.Problem"/>.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hex.</param>
/// <param name="House">House id or <see cref="ReadingBatch.WholeNursery"/>.</param>
/// <param name="Source">Export name.</param>
/// <param name="RowsRead">Data rows seen, header and comments not counted.</param>
/// <param name="Accepted">Rows that are in the store.</param>
/// <param name="SetAside">Rows that could not be read, kept with line and reason.</param>
/// <param name="Duplicates">Rows that said what the store already held.</param>
/// <param name="Blank">Empty rows.</param>
/// <param name="First">First accepted stamp, or null.</param>
/// <param name="Last">Last accepted stamp, or null.</param>
/// <param name="CellsNotRead">Cells of accepted rows that were neither a number nor a missing code, by column; kept with line and reason.</param>
/// <param name="Conflicts">Rows whose stamp the store held with other values: the newer file won, the older values are kept aside.</param>
public sealed record ImportSheet(
    string File,
    string Sha256,
    string House,
    string Source,
    int RowsRead,
    int Accepted,
    int SetAside,
    int Duplicates,
    int Blank,
    Instant? First,
    Instant? Last,
    int CellsNotRead,
    int Conflicts)
{
    /// <summary>First stamp of its rows, accepted or not, or null where none has one.</summary>
    public Instant? From { get; init; }

    /// <summary>Last of them.</summary>
    public Instant? To { get; init; }

    /// <summary>Whether it may tell of a stretch of time: accepted rows lie in it, or, where none was accepted, any; or nothing could be placed in time.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End, not part of it.</param>
    public bool TellsOf(Instant from, Instant to) => (First ?? From) is not Instant first || (Last ?? To) is not Instant last || (first < to && last >= from);

    /// <summary>What else the import found in it; null where that was not asked for, or is lost.</summary>
    public ImportDetails? Details { get; init; }

    /// <summary>SHA-256 of the sheet that the store keeps; empty where it keeps none.</summary>
    public string SheetSha256 { get; init; } = "";
}
