namespace ClimateLens.Logs.Text;

/// <summary>
/// An export's bytes, hashed while they are read, so that hash and rows come from one pass over the file and are of the
/// same bytes even where a logger goes on writing. Where it is read out of order, what is missing is read at the end.
/// </summary>
/// <param name="inner">The text.</param>
internal sealed class ExportStream(Stream inner) : Stream
{
    private const int Chunk = 128 << 10;

    private readonly PieceHash _hash = new();
    private long _hashed;
    private long? _end; // once the end was seen, what is written behind it is of the next import
    private string? _sha256;

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => true;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => _end ?? inner.Length;

    /// <inheritdoc/>
    public override long Position
    {
        get => inner.Position;
        set => inner.Position = value;
    }

    /// <summary>Where the text ends and a tail of NUL bytes begins; they are hashed but not read. [bytes]</summary>
    public long TextBytes { get; init; } = long.MaxValue;

    /// <summary>Whether it reads that stream itself.</summary>
    public bool IsOver(Stream other) => ReferenceEquals(inner, other);

    /// <summary>SHA-256 of all bytes up to the end that the reader saw, lower-case hex. Leaves the position at the end.</summary>
    /// <exception cref="ExportReadException">The file cannot be read to its end.</exception>
    public string Sha256()
    {
        if (_sha256 is null)
        {
            byte[] buffer = new byte[Chunk];
            inner.Position = _hashed;
            while (ReadOn(buffer, _end ?? long.MaxValue) > 0)
            {
                // reading hashes
            }

            _sha256 = _hash.Finish();
        }

        return _sha256;
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer) => ReadOn(buffer, Math.Min(TextBytes, _end ?? long.MaxValue));

    private int ReadOn(Span<byte> buffer, long end)
    {
        long at = inner.Position;
        int most = (int)Math.Min(buffer.Length, Math.Max(0, end - at));
        int read = ReadInner(buffer[..most]);
        if (read == 0 && buffer.Length > 0 && at < TextBytes)
        {
            _end ??= at;
        }

        if (at <= _hashed && at + read > _hashed)
        {
            _hash.Append(buffer[(int)(_hashed - at)..read]);
            _hashed = at + read;
        }

        return read;
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => inner.Seek(offset, origin);

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
            _hash.Dispose();
        }

        base.Dispose(disposing);
    }

    private int ReadInner(Span<byte> buffer)
    {
        try
        {
            return inner.Read(buffer);
        }
        catch (IOException e)
        {
            throw new ExportReadException(e);
        }
    }
}

/// <summary>An export cannot be read to its end; not to be taken for a fault of the store's disk.</summary>
internal sealed class ExportReadException(IOException cause) : Exception(cause.Message, cause);
