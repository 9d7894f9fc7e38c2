using System.Security.Cryptography;

namespace ClimateLens.Logs.Store;

/// <summary>Takes the hash of what is written through it, from first to last byte.</summary>
/// <param name="inner">Where it goes; closed with this.</param>
/// <param name="closed">Told the number of bytes and their SHA-256 when it is closed.</param>
internal sealed class HashedWriteStream(Stream inner, Action<long, string> closed) : WriteOnlyStream
{
    private const int Buffer = 64 << 10;

    private readonly BufferedStream _out = new(inner, Buffer);
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private long _length;
    private bool _closed;

    /// <inheritdoc/>
    public override long Length => _length;

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        _out.Write(buffer);
        _hash.AppendData(buffer);
        _length += buffer.Length;
    }

    /// <inheritdoc/>
    public override void Flush() => _out.Flush();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing && !_closed)
        {
            _closed = true;
            _out.Dispose();
            closed(_length, Convert.ToHexStringLower(_hash.GetHashAndReset()));
            _hash.Dispose();
        }

        base.Dispose(disposing);
    }
}
