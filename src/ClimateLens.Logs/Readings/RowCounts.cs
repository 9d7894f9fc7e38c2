using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Readings;

/// <summary>What became of the rows of one file. Read = Accepted + SetAside + Duplicates + Blank, always.</summary>
internal sealed class RowCounts
{
    /// <summary>Data rows seen.</summary>
    public int Read { get; set; }

    /// <summary>Rows that are in the store.</summary>
    public int Accepted { get; set; }

    /// <summary>Rows kept aside.</summary>
    public int SetAside { get; set; }

    /// <summary>Rows that said nothing new.</summary>
    public int Duplicates { get; set; }

    /// <summary>Empty rows.</summary>
    public int Blank { get; set; }

    /// <summary>Cells kept aside from rows that stand.</summary>
    public int CellsNotRead { get; set; }

    /// <summary>Rows that contradicted an older one.</summary>
    public int Conflicts { get; set; }

    /// <summary>Rows by the format of their time, in the order of the settings; empty where the export has one format.</summary>
    public IReadOnlyList<(string Format, int Rows)> RowsByFormat { get; set; } = [];

    /// <summary>Step of the file's readings; null for records and for files with fewer than two readings.</summary>
    public NominalStep? Step { get; set; }

    /// <summary>First accepted stamp. [µs]</summary>
    public long First { get; private set; } = long.MaxValue;

    /// <summary>Last accepted stamp. [µs]</summary>
    public long Last { get; private set; } = long.MinValue;

    /// <summary>Counts an accepted row.</summary>
    public void Accept(long utc)
    {
        Accepted++;
        First = Math.Min(First, utc);
        Last = Math.Max(Last, utc);
    }
}
