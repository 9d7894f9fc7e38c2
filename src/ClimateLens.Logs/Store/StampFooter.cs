using System.Buffers.Binary;

namespace ClimateLens.Logs.Store;

/// <summary>
/// A stream for a Parquet writer that mends the statistics of stamps in its footer. The package writes lowest and highest stamp of a row group
/// in milliseconds whatever the unit of the column is (a fault known to its makers), and readers that trust them, DuckDB among them, then skip
/// rows that a query asks for. The footer is held back, and each such pair of eight bytes replaced by the right one.
/// </summary>
/// <param name="inner">Where it goes; not closed with this.</param>
internal sealed class StampFooter(Stream inner) : WriteOnlyStream
{
    private readonly HashSet<long> _stamps = [];
    private readonly MemoryStream _held = new();
    private bool _holding;

    /// <inheritdoc/>
    public override long Length => inner.Length + _held.Length;

    /// <summary>Notes the lowest and the highest stamp of a column of a row group. [µs since 1970-01-01T00:00Z]</summary>
    public void Note(long lowest, long highest)
    {
        _stamps.Add(lowest);
        _stamps.Add(highest);
    }

    /// <summary>What is written from now on is the footer.</summary>
    public void HoldBack() => _holding = true;

    /// <summary>Writes the footer, mended.</summary>
    public void Release()
    {
        byte[] footer = _held.ToArray();
        Span<byte> wrong = stackalloc byte[sizeof(long)], right = stackalloc byte[sizeof(long)];
        foreach (long micros in _stamps)
        {
            BinaryPrimitives.WriteInt64LittleEndian(wrong, Math.DivRem(micros, 1000, out long rest) - (rest < 0 ? 1 : 0));
            BinaryPrimitives.WriteInt64LittleEndian(right, micros);
            for (int at = 0, found; (found = footer.AsSpan(at).IndexOf(wrong)) >= 0; at += found + sizeof(long))
            {
                right.CopyTo(footer.AsSpan(at + found));
            }
        }

        _holding = false;
        inner.Write(footer);
    }

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer) => (_holding ? _held : inner).Write(buffer);

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();
}
