using System.Security.Cryptography;

namespace ClimateLens.Logs.Text;

/// <summary>Takes the SHA-256 of pieces beside the thread that hands them over: while one is hashed, the next is read.</summary>
internal sealed class PieceHash : IDisposable
{
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private byte[] _piece = [];
    private Task _running = Task.CompletedTask;

    /// <summary>Takes the next piece, which is copied.</summary>
    public void Append(ReadOnlySpan<byte> piece)
    {
        _running.Wait();
        _piece = _piece.Length < piece.Length ? new byte[piece.Length] : _piece;
        piece.CopyTo(_piece);
        int length = piece.Length;
        _running = Task.Run(() => _hash.AppendData(_piece, 0, length));
    }

    /// <summary>The hash of all pieces, lower-case hex; further ones begin anew.</summary>
    public string Finish()
    {
        _running.Wait();
        return Convert.ToHexStringLower(_hash.GetHashAndReset());
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _running.Wait();
        _hash.Dispose();
    }
}
