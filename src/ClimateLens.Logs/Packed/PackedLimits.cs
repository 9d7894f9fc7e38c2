namespace ClimateLens.Logs.Packed;

/// <summary>Bounds on what a packed file may grow to, so that a small file cannot fill memory or disk.</summary>
internal static class PackedLimits
{
    /// <summary>Largest text that comes out of one packed file. [bytes]</summary>
    public const long TextBytes = 4L << 30;

    /// <summary>Kept in memory up to here, then in a file for the time of the import. [bytes]</summary>
    public const int MemoryBytes = 16 << 20;

    /// <summary>Up to here a text may be any number of times larger than what it is packed in. [bytes]</summary>
    public const long FreeBytes = 64L << 20;

    /// <summary>How many times larger a text may be. Logs shrink five to thirty times; this leaves room for flat lines.</summary>
    public const int Growth = 200;

    /// <summary>Most entries of an archive.</summary>
    public const int Entries = 10_000;

    /// <summary>Largest text of all entries of an archive together. [bytes]</summary>
    public const long ArchiveBytes = 16L << 30;

    /// <summary>Most columns of a sheet; no program writes more.</summary>
    public const int SheetColumns = 16_384;

    /// <summary>Most rows of a sheet; no program writes more.</summary>
    public const int SheetRows = 1_048_576;

    /// <summary>Largest sum of the parts of a workbook. [bytes]</summary>
    public const long WorkbookBytes = 1L << 30;
}
