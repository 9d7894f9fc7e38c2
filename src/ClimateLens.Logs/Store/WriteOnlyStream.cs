namespace ClimateLens.Logs.Store;

/// <summary>A stream that is written once from its start to its end; what comes of it says <see cref="Write(ReadOnlySpan{byte})"/>.</summary>
internal abstract class WriteOnlyStream : Stream
{
    /// <inheritdoc/>
    public sealed override bool CanRead => false;

    /// <inheritdoc/>
    public sealed override bool CanSeek => false;

    /// <inheritdoc/>
    public sealed override bool CanWrite => true;

    /// <inheritdoc/>
    public sealed override long Position
    {
        get => Length;
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public abstract override void Write(ReadOnlySpan<byte> buffer);

    /// <inheritdoc/>
    public sealed override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public sealed override Task WriteAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken)
    {
        Write(buffer.AsSpan(offset, count));
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public sealed override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        Write(buffer.Span);
        return ValueTask.CompletedTask;
    }

    /// <inheritdoc/>
    public sealed override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public sealed override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public sealed override void SetLength(long value) => throw new NotSupportedException();
}
