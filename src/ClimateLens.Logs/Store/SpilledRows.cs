using System.Runtime.InteropServices;
using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Store;

/// <summary>Sorted rows in a file of the program's own, block by block as they lie in memory; gone when the import ends.</summary>
internal sealed class SpilledRows : SortedRows
{
    private readonly string _path;
    private Stream? _out;
    private int _count;
    private long _first;
    private long _last;

    /// <summary>Starts a file.</summary>
    public SpilledRows(StoreDisk disk, string path, string[] names)
    {
        _path = path;
        Names = names;
        _out = disk.Create(path);
    }

    /// <inheritdoc/>
    public override string[] Names { get; }

    /// <inheritdoc/>
    public override int Count => _count;

    /// <inheritdoc/>
    public override long First => _first;

    /// <inheritdoc/>
    public override long Last => _last;

    /// <summary>Adds a block behind the others.</summary>
    public void Write(YearRows block)
    {
        if (block.Count == 0)
        {
            return;
        }

        int count = block.Count;
        _out!.Write(MemoryMarshal.AsBytes(new ReadOnlySpan<int>(in count)));
        _out.Write(MemoryMarshal.AsBytes(block.Utc.AsSpan(0, count)));
        _out.Write(MemoryMarshal.AsBytes(block.File.AsSpan(0, count)));
        _out.Write(MemoryMarshal.AsBytes(block.Line.AsSpan(0, count)));
        foreach (double[] column in block.Columns)
        {
            _out.Write(MemoryMarshal.AsBytes(column.AsSpan(0, count)));
        }

        _first = _count == 0 ? block.Utc[0] : _first;
        _last = block.Utc[count - 1];
        _count += count;
    }

    /// <summary>No more blocks follow.</summary>
    public void Complete()
    {
        _out?.Dispose();
        _out = null;
    }

    /// <inheritdoc/>
    public override IEnumerable<YearRows> Blocks()
    {
        using var stream = new FileStream(_path, new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 0 });
        var block = new YearRows(Names);
        for (int left = _count; left > 0; left -= block.Count)
        {
            Read(stream, block);
            yield return block;
        }
    }

    private static void Read(FileStream stream, YearRows block)
    {
        int count = 0;
        stream.ReadExactly(MemoryMarshal.AsBytes(new Span<int>(ref count)));
        if (block.Utc.Length < count)
        {
            block.Grow(count);
        }

        block.Count = count;
        stream.ReadExactly(MemoryMarshal.AsBytes(block.Utc.AsSpan(0, count)));
        stream.ReadExactly(MemoryMarshal.AsBytes(block.File.AsSpan(0, count)));
        stream.ReadExactly(MemoryMarshal.AsBytes(block.Line.AsSpan(0, count)));
        foreach (double[] column in block.Columns)
        {
            stream.ReadExactly(MemoryMarshal.AsBytes(column.AsSpan(0, count)));
        }
    }
}
