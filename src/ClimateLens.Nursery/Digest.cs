using System.Buffers;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;

namespace ClimateLens.Nursery;

/// <summary>SHA-256 of many pieces. Small ones are gathered, since each call of the library costs more than they do.</summary>
public sealed class Digest : IDisposable
{
    private const int MostGathered = 1 << 14;

    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly ArrayBufferWriter<byte> _gathered = new(MostGathered);

    /// <summary>The hash of one text in UTF-8, lower-case hex.</summary>
    public static string OfText(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

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

    /// <summary>Takes texts, each behind its length, so that no two rows of texts run into the same bytes.</summary>
    public void Texts(params ReadOnlySpan<string> texts)
    {
        foreach (string text in texts)
        {
            byte[] bytes = Encoding.UTF8.GetBytes(text);
            Numbers(bytes.Length);
            Add(bytes);
        }
    }

    /// <summary>Takes numbers.</summary>
    public void Numbers(params ReadOnlySpan<double> numbers) => Add(MemoryMarshal.AsBytes(numbers));

    /// <summary>The hash of all pieces since the last one, lower-case hex.</summary>
    public string Finish() => Convert.ToHexStringLower(FinishBytes());

    /// <summary>The hash of all pieces since the last one, 32 bytes.</summary>
    public byte[] FinishBytes()
    {
        Flush();
        return _hash.GetHashAndReset();
    }

    /// <inheritdoc/>
    public void Dispose() => _hash.Dispose();

    private void Flush()
    {
        _hash.AppendData(_gathered.WrittenSpan);
        _gathered.ResetWrittenCount();
    }
}
