using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// The rows of one file within one UTC year, while it is read: as runs of ascending time or, where they come in the order
/// of time and the store holds none of the year, already on their way into its part.
/// </summary>
/// <param name="names">Column names in ordinal order.</param>
internal sealed class FileYear(string[] names)
{
    private readonly List<SortedRows> _spilled = [];
    private List<MemoryRows> _runs = [];
    private bool _strict = true;

    /// <summary>Stamp of the first row in time. [µs since 1970-01-01T00:00Z]</summary>
    public long First { get; private set; } = long.MaxValue;

    /// <summary>Stamp of the last row in time. [µs since 1970-01-01T00:00Z]</summary>
    public long Last { get; private set; } = long.MinValue;

    /// <summary>Number of rows.</summary>
    public int Count { get; private set; }

    /// <summary>Memory that the runs take. [bytes]</summary>
    public long Bytes => _runs.Sum(run => run.Bytes);

    /// <summary>The part that the rows went into; null while they are runs.</summary>
    public ReadingPartWriter? Flow { get; private set; }

    /// <summary>Whether all rows came in the order of time and none was put on disk.</summary>
    public bool IsInOrder => _strict && _runs.Count <= 1 && _spilled.Count == 0;

    /// <summary>Takes the next block of the file; false when the rows are flowing and these do not follow in time.</summary>
    public bool Add(YearRows block, BlockPool pool)
    {
        bool ascending = BlockOrder.IsAscending(block);
        bool follows = ascending && block.Utc[0] > Last;
        if (Flow is not null)
        {
            if (!follows || Flow.IsComplete)
            {
                return false;
            }

            Note(block);
            Flow.Add(block);
            pool.Return(block);
            return true;
        }

        if (!ascending)
        {
            BlockOrder.Sort(block);
            _strict = false;
        }

        if (_runs.Count == 0 || block.Utc[0] <= _runs[^1].Last)
        {
            _runs.Add(new MemoryRows(names));
        }

        _runs[^1].Add(block);
        Note(block);
        return true;
    }

    /// <summary>Lets the rows flow into a part from now on.</summary>
    public void FlowInto(ReadingPartWriter writer, BlockPool pool)
    {
        Flow = writer;
        foreach (YearRows block in _runs.SelectMany(run => run.Blocks()))
        {
            writer.Add(block);
            pool.Return(block);
        }

        _runs = [];
    }

    /// <summary>Puts the runs on disk, as one.</summary>
    public void Spill(MemoryLimits limits, SpillFolder folder)
    {
        _spilled.Add(RunMerge.Merge(_runs, new RowCollector(names, limits, memory: 0, folder)));
        _runs = [];
    }

    /// <summary>The rows in ascending time, one for each time; counts duplicates and rows overruled by a later one.</summary>
    public SortedRows Tidy(MemoryLimits limits, SpillFolder folder, RowCounts counts, SetAsideLog aside)
    {
        if (IsInOrder)
        {
            return _runs.Count == 0 ? new MemoryRows(names) : _runs[0];
        }

        List<SortedRows> runs = [.. _spilled, .. _runs];
        return Chained(runs) ?? RunMerge.Tidy(runs, new RowCollector(names, limits, limits.FileBytes, folder), counts, aside);
    }

    /// <summary>Runs that do not reach into each other, as of a file with the newest row first, need only be put in order.</summary>
    private MemoryRows? Chained(List<SortedRows> runs)
    {
        SortedRows[] ordered = [.. runs.OrderBy(run => run.First)];
        var chain = new MemoryRows(names);
        foreach (SortedRows run in ordered)
        {
            if (_spilled.Count > 0 || (chain.Count > 0 && run.First <= chain.Last) || run.Blocks().Any(block => !BlockOrder.IsAscending(block)))
            {
                return null;
            }

            foreach (YearRows block in run.Blocks())
            {
                chain.Add(block);
            }
        }

        return chain;
    }

    private void Note(YearRows block)
    {
        First = Math.Min(First, block.Utc[0]);
        Last = Math.Max(Last, block.Utc[block.Count - 1]);
        Count += block.Count;
    }
}
