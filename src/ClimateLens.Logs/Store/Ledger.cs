using System.Text.Json.Serialization;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Store;

/// <summary>What the store holds and how it came there. Written last; whatever it does not name is not in force.</summary>
internal sealed record Ledger
{
    /// <summary>Format of store and ledger that this program writes.</summary>
    public const int CurrentFormat = 1;

    /// <summary>Format of the store.</summary>
    public int Format { get; init; } = CurrentFormat;

    /// <summary>Sources in the order in which they were first imported.</summary>
    public List<LedgerSource> Sources { get; init; } = [];

    /// <summary>Files that are no longer in force and are removed.</summary>
    public List<string> Obsolete { get; init; } = [];
}

/// <summary>One source.</summary>
internal sealed record LedgerSource
{
    /// <summary>House id of the export, or "nursery".</summary>
    public required string House { get; init; }

    /// <summary>Record kind as in the nursery file, or null for readings.</summary>
    public string? Kind { get; init; }

    /// <summary>Export name.</summary>
    public required string Source { get; init; }

    /// <summary>SHA-256 of the export settings that its files were read with.</summary>
    public required string Settings { get; init; }

    /// <summary>Files in the order in which they were imported.</summary>
    public List<LedgerFile> Files { get; init; } = [];

    /// <summary>Store files.</summary>
    public List<LedgerPart> Parts { get; init; } = [];

    /// <summary>Whether only the parts tell of the source, since the ledger was lost: the order of its files is not known. Kept until an import has read them again.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool IsAdopted { get; init; }

    /// <summary>The parts that hold rows of a house, or of the whole nursery, and reach into a time.</summary>
    /// <param name="houseId">House id.</param>
    /// <param name="from">Its start. [µs since 1970-01-01T00:00Z]</param>
    /// <param name="to">Its end, not part of it. [µs since 1970-01-01T00:00Z]</param>
    public IEnumerable<LedgerPart> PartsOf(string houseId, long from, long to)
        => Parts.Where(p => (p.House == houseId || p.House == ReadingBatch.WholeNursery) && p.First < to && p.Last >= from);

    /// <summary>The key.</summary>
    public SourceKey Key => new(House, Kind is not null && RecordKinds.TryParse(Kind, out RecordKind kind) ? kind : null, Source);
}

/// <summary>One imported file. Its row counts are those of <see cref="ClimateLens.Nursery.ImportSheet"/>.</summary>
internal sealed record LedgerFile
{
    /// <summary>Size of a file that only the store's parts tell of.</summary>
    public const long UnknownSize = -1;

    public required string File { get; init; }

    public required string Sha256 { get; init; }

    public long Size { get; init; }

    public int RowsRead { get; init; }

    public int Accepted { get; init; }

    public int SetAside { get; init; }

    public int Duplicates { get; init; }

    public int Blank { get; init; }

    /// <summary>First accepted stamp. [µs since 1970-01-01T00:00Z]</summary>
    public long? First { get; init; }

    /// <summary>Last accepted stamp. [µs since 1970-01-01T00:00Z]</summary>
    public long? Last { get; init; }

    /// <summary>First stamp of all rows that have one, accepted or not. [µs since 1970-01-01T00:00Z]</summary>
    public long? From { get; init; }

    /// <summary>Last stamp of all rows that have one, accepted or not. [µs since 1970-01-01T00:00Z]</summary>
    public long? To { get; init; }

    public int CellsNotRead { get; init; }

    public int Conflicts { get; init; }

    /// <summary>The file that keeps what was set aside, or null.</summary>
    public StoredFile? SetAsideFile { get; init; }

    /// <summary>Whether a time lies within the span of the file's rows.</summary>
    public bool Covers(long utc) => (From ?? First) <= utc && utc <= (To ?? Last);

    /// <summary>The sheet that tells what the import found in the file; null for a file whose rows came with a lost ledger.</summary>
    public StoredFile? Sheet { get; init; }

    /// <summary>What the sheet tells, while the file was read in this run; else null.</summary>
    [JsonIgnore]
    public ImportDetails? Details { get; init; }
}

/// <summary>A file of the store.</summary>
/// <param name="Path">Relative to the store.</param>
/// <param name="Size">Its size. [bytes]</param>
/// <param name="Sha256">SHA-256 of its bytes.</param>
internal sealed record StoredFile(string Path, long Size, string Sha256);

/// <summary>A Parquet file of the store.</summary>
/// <param name="Stored">The file.</param>
/// <param name="House">House of its rows.</param>
/// <param name="Year">UTC year of its readings; 0 for records.</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="First">First stamp. [µs since 1970-01-01T00:00Z]</param>
/// <param name="Last">Last stamp. [µs since 1970-01-01T00:00Z]</param>
internal sealed record LedgerPart(StoredFile Stored, string House, int Year, int Rows, long First, long Last)
{
    /// <summary>What tells whether weeks of it are as they were; null in a ledger that an older program wrote.</summary>
    public PartTrace? Trace { get; init; }
}
