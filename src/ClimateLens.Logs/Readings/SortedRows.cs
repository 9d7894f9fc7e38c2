namespace ClimateLens.Logs.Readings;

/// <summary>
/// Rows of one source and UTC year in ascending time, in memory or on disk. They can be walked over again and again, a
/// block at a time, so that a year of any length takes little memory.
/// </summary>
internal abstract class SortedRows
{
    /// <summary>Column names in ordinal order.</summary>
    public abstract string[] Names { get; }

    /// <summary>Number of rows.</summary>
    public abstract int Count { get; }

    /// <summary>Stamp of the first row. [µs since 1970-01-01T00:00Z]</summary>
    public abstract long First { get; }

    /// <summary>Stamp of the last row. [µs since 1970-01-01T00:00Z]</summary>
    public abstract long Last { get; }

    /// <summary>Memory that they hold. [bytes]</summary>
    public virtual long Bytes => 0;

    /// <summary>The rows in their order; a block holds until the next one is taken, and is not to be changed.</summary>
    public abstract IEnumerable<YearRows> Blocks();
}

/// <summary>Rows in memory, as blocks one after the other.</summary>
/// <param name="names">Column names in ordinal order.</param>
internal sealed class MemoryRows(string[] names) : SortedRows
{
    private readonly List<YearRows> _blocks = [];
    private int _count;
    private long _bytes;

    /// <inheritdoc/>
    public override string[] Names => names;

    /// <inheritdoc/>
    public override int Count => _count;

    /// <inheritdoc/>
    public override long First => _blocks[0].Utc[0];

    /// <inheritdoc/>
    public override long Last => _blocks[^1].Utc[_blocks[^1].Count - 1];

    /// <inheritdoc/>
    public override long Bytes => _bytes;

    /// <inheritdoc/>
    public override IEnumerable<YearRows> Blocks() => _blocks;

    /// <summary>Adds a block behind the others.</summary>
    public void Add(YearRows block)
    {
        if (block.Count > 0)
        {
            _blocks.Add(block);
            _count += block.Count;
            _bytes += block.Bytes;
        }
    }
}
