using ClimateLens.Logs.Sheets;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Readings;

/// <summary>What became of the rows of one file. Read = Accepted + SetAside + Duplicates + Blank, always.</summary>
internal sealed class RowCounts
{
    /// <summary>Data rows seen, without those of other columns.</summary>
    public int Read { get; set; }

    /// <summary>Rows of a long table that belong to none of the columns that are read; they are not among <see cref="Read"/>.</summary>
    public int OfOthers { get; private set; }

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

    /// <summary>Step of the file's readings; null for records and for files with fewer than two readings.</summary>
    public NominalStep? Step { get; set; }

    /// <summary>What else is noted of the file.</summary>
    public FileFacts Facts { get; } = new();

    /// <summary>First accepted stamp. [µs]</summary>
    public long First { get; private set; } = long.MaxValue;

    /// <summary>Last accepted stamp. [µs]</summary>
    public long Last { get; private set; } = long.MinValue;

    /// <summary>First stamp of all rows that have one, accepted or not. [µs]</summary>
    public long From { get; private set; } = long.MaxValue;

    /// <summary>Last stamp of all rows that have one, accepted or not. [µs]</summary>
    public long To { get; private set; } = long.MinValue;

    /// <summary>Takes the row that was counted last for one of other columns.</summary>
    public void LeaveToOthers()
    {
        Read--;
        OfOthers++;
    }

    /// <summary>Notes the span of rows that have a stamp.</summary>
    public void Cover(long first, long last)
    {
        From = Math.Min(From, first);
        To = Math.Max(To, last);
    }

    /// <summary>Counts accepted rows.</summary>
    public void Accept(int rows, long first, long last)
    {
        Accepted += rows;
        First = Math.Min(First, first);
        Last = Math.Max(Last, last);
    }

    /// <summary>Counts an accepted row.</summary>
    public void Accept(long utc)
    {
        Accepted++;
        First = Math.Min(First, utc);
        Last = Math.Max(Last, utc);
    }
}
