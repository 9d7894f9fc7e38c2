using System.Buffers;
using System.Security.Cryptography;

namespace ClimateLens.Logs.Store;

/// <summary>SHA-256 as lower-case hex.</summary>
internal static class ContentHash
{
    private const int Chunk = 128 << 10;

    /// <summary>Of bytes.</summary>
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Of a stream from its position.</summary>
    public static string Of(Stream stream)
    {
        // The framework's own loop over a stream reads 4 KiB at a time.
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        byte[] chunk = ArrayPool<byte>.Shared.Rent(Chunk);
        for (int read = stream.Read(chunk); read > 0; read = stream.Read(chunk))
        {
            hash.AppendData(chunk.AsSpan(0, read));
        }

        ArrayPool<byte>.Shared.Return(chunk);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>Of a file; null when there is none.</summary>
    public static string? OfFile(string path)
    {
        if (!File.Exists(path))
        {
            return null;
        }

        using var stream = new FileStream(path, new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 0 });
        return Of(stream);
    }
}
