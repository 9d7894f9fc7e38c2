using ClimateLens.Logs.Sheets;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Takes the blocks of one file as they are read, by UTC year. Rows that come in the order of time flow into the store's
/// parts at once, where a part is open to them; the others stay in memory up to a limit, and on disk beyond it.
/// </summary>
/// <param name="names">Column names in ordinal order.</param>
/// <param name="limits">Sizes.</param>
/// <param name="folder">Where rows go beyond the limit.</param>
/// <param name="open">Opens the part of a year for rows that are all it will hold; null where rows may not flow.</param>
internal sealed class FileRows(string[] names, MemoryLimits limits, SpillFolder folder, Func<int, ReadingPartWriter?>? open)
{
    private readonly SortedDictionary<int, FileYear> _years = [];

    /// <summary>Steps, gaps and values of the rows that flowed; the others are to be added once they are tidied.</summary>
    public SeriesStatistics Statistics { get; } = new(names);

    /// <summary>The years of the file.</summary>
    public IReadOnlyDictionary<int, FileYear> Years => _years;

    /// <summary>Blocks for the reading side.</summary>
    public BlockPool Pool { get; } = new(names, most: 24);

    /// <summary>Whether rows flowed that turned out not to be in the order of time: the file is to be read again, without flowing.</summary>
    public bool MustSort { get; private set; }

    /// <summary>Takes the next block of the file.</summary>
    public void Take(int year, YearRows block)
    {
        if (MustSort || block.Count == 0)
        {
            return;
        }

        if (!_years.TryGetValue(year, out FileYear? into))
        {
            _years.Add(year, into = new FileYear(names, Statistics));
        }

        bool full = block.Count >= limits.BlockRows;
        MustSort = !into.Add(block, Pool);
        if (open is not null && full && !MustSort)
        {
            LetFlow(year, into);
        }

        Spill();
    }

    /// <summary>A year with a whole row group begins to flow; one that a later year has followed with a full block is complete.</summary>
    private void LetFlow(int year, FileYear current)
    {
        if (current.Count >= limits.GroupRows)
        {
            Open(year, current);
        }

        foreach ((int earlier, FileYear rows) in _years)
        {
            // A few stray rows of an earlier year may well be followed by more of them.
            if (earlier < year && rows.Last < current.First && rows.Count >= limits.BlockRows)
            {
                Open(earlier, rows);
                rows.Flow?.Complete();
            }
        }
    }

    private void Open(int year, FileYear rows)
    {
        if (rows.Flow is null && rows.IsInOrder && open!(year) is ReadingPartWriter writer)
        {
            rows.FlowInto(writer, Pool);
        }
    }

    private void Spill()
    {
        while (_years.Values.Sum(rows => rows.Bytes) > limits.FileBytes)
        {
            _years.Values.MaxBy(rows => rows.Bytes)!.Spill(limits, folder);
        }
    }
}
