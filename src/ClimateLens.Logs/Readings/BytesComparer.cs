namespace ClimateLens.Logs.Readings;

/// <summary>Compares texts as bytes, so that a dictionary of them can be asked with a piece of a row.</summary>
internal sealed class BytesComparer : IEqualityComparer<byte[]>, IAlternateEqualityComparer<ReadOnlySpan<byte>, byte[]>
{
    /// <inheritdoc/>
    public bool Equals(byte[]? x, byte[]? y) => x.AsSpan().SequenceEqual(y);

    /// <inheritdoc/>
    public int GetHashCode(byte[] obj) => GetHashCode(obj.AsSpan());

    /// <inheritdoc/>
    public bool Equals(ReadOnlySpan<byte> alternate, byte[] other) => alternate.SequenceEqual(other);

    /// <inheritdoc/>
    public int GetHashCode(ReadOnlySpan<byte> alternate)
    {
        var hash = default(HashCode);
        hash.AddBytes(alternate);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public byte[] Create(ReadOnlySpan<byte> alternate) => alternate.ToArray();
}
