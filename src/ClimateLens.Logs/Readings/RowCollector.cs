using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Readings;

/// <summary>Takes rows in ascending time, one by one; keeps them in memory, or on disk when they become many.</summary>
/// <param name="names">Column names in ordinal order.</param>
/// <param name="limits">Size of blocks.</param>
/// <param name="memory">Most memory. [bytes]</param>
/// <param name="spill">Where they go beyond it.</param>
internal sealed class RowCollector(string[] names, MemoryLimits limits, long memory, SpillFolder spill)
{
    private MemoryRows _rows = new(names);
    private SpilledRows? _spilled;

    /// <summary>Block of the last row.</summary>
    public YearRows Block { get; private set; } = new(names);

    /// <summary>Place of the last row in its block; -1 before the first.</summary>
    public int Row => Block.Count - 1;

    /// <summary>Whether a row was taken.</summary>
    public bool Any => Block.Count > 0;

    /// <summary>Takes a row.</summary>
    /// <param name="from">Its block.</param>
    /// <param name="row">The row.</param>
    /// <param name="places">For each column of <paramref name="from"/> its place here.</param>
    public void Append(YearRows from, int row, ReadOnlySpan<int> places)
    {
        if (Block.Count == limits.BlockRows)
        {
            Put();
        }

        Block.Append(from, row, places);
    }

    /// <summary>All rows.</summary>
    public SortedRows Finish()
    {
        Put();
        _spilled?.Complete();
        return _spilled is null ? _rows : _spilled;
    }

    private void Put()
    {
        if (_spilled is null && _rows.Bytes + Block.Bytes > memory)
        {
            _spilled = spill.Create(names);
            foreach (YearRows block in _rows.Blocks())
            {
                _spilled.Write(block);
            }

            _rows = new MemoryRows(names);
        }

        if (_spilled is null)
        {
            _rows.Add(Block);
            Block = new YearRows(names);
        }
        else
        {
            _spilled.Write(Block);
            Block.Count = 0;
        }
    }
}
