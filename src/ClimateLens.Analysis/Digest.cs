using System.Buffers;
using System.Security.Cryptography;

namespace ClimateLens.Analysis;

/// <summary>SHA-256 of many pieces. Small ones are gathered, since each call of the library costs more than they do.</summary>
internal sealed class Digest : IDisposable
{
    private const int MostGathered = 1 << 14;

    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly ArrayBufferWriter<byte> _gathered = new(MostGathered);

    /// <summary>Takes the next piece.</summary>
    public void Add(ReadOnlySpan<byte> piece)
    {
        if (_gathered.WrittenCount + piece.Length > MostGathered)
        {
            Flush();
        }

        if (piece.Length > MostGathered)
        {
            _hash.AppendData(piece);
        }
        else
        {
            _gathered.Write(piece);
        }
    }

    /// <summary>The hash of all pieces, lower-case hex.</summary>
    public string Finish()
    {
        Flush();
        return Convert.ToHexStringLower(_hash.GetHashAndReset());
    }

    /// <inheritdoc/>
    public void Dispose() => _hash.Dispose();

    private void Flush()
    {
        _hash.AppendData(_gathered.WrittenSpan);
        _gathered.ResetWrittenCount();
    }
}
