using System.Security.Cryptography;

namespace ClimateLens.Logs.Store;

/// <summary>SHA-256 as lower-case hex.</summary>
internal static class ContentHash
{
    /// <summary>Of bytes.</summary>
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Of a stream from its position.</summary>
    public static string Of(Stream stream) => Convert.ToHexStringLower(SHA256.HashData(stream));

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
