using System.IO.Compression;

namespace ClimateLens.Logs.Packed;

/// <summary>A packed file cannot be unpacked.</summary>
/// <param name="found">What it is.</param>
/// <param name="expected">What would be right.</param>
/// <param name="mend">What the user can do.</param>
internal sealed class UnpackException(string found, string expected, string mend) : Exception(found)
{
    /// <summary>What it is.</summary>
    public string Found => Message;

    /// <summary>What would be right.</summary>
    public string Expected => expected;

    /// <summary>What the user can do.</summary>
    public string Mend => mend;
}

/// <summary>Unpacks a text into memory or, where it is long, into a file that ends with its stream.</summary>
internal static class Unpacking
{
    private const int Chunk = 128 << 10;
    private const int HeaderBytes = 10;
    private static readonly byte[] MemberStart = [0x1F, 0x8B, 0x08];

    /// <summary>The text of a gzip file.</summary>
    /// <exception cref="UnpackException">It is damaged or too large.</exception>
    public static Stream Gzip(FileStream file)
    {
        using var unpacked = new GZipStream(file, CompressionMode.Decompress, leaveOpen: true);
        Stream text = Bounded(unpacked, file.Length);
        if (IsCutShort(file, text.Length))
        {
            text.Dispose();
            throw Damaged();
        }

        return text;
    }

    /// <summary>The text of an entry of a zip archive.</summary>
    /// <exception cref="UnpackException">It is damaged, protected or too large.</exception>
    public static Stream Entry(FileStream file, string name)
    {
        try
        {
            using var archive = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: true);
            ZipArchiveEntry entry = archive.GetEntry(name) ?? throw new UnpackException("no such entry any more", "the entry", "Import again once the archive is written.");
            if (entry.IsEncrypted)
            {
                throw new UnpackException("an entry with a password", "one without", "Pack it again without a password.");
            }

            using Stream unpacked = entry.Open();
            Stream text = Bounded(unpacked, entry.CompressedLength);
            if (text.Length == entry.Length && Crc32Of(text) == entry.Crc32)
            {
                return text;
            }

            text.Dispose();
            throw Damaged();
        }
        catch (InvalidDataException)
        {
            throw Damaged();
        }
    }

    private static uint Crc32Of(Stream text)
    {
        var sum = new System.IO.Hashing.Crc32();
        sum.Append(text);
        text.Position = 0;
        return sum.GetCurrentHashAsUInt32();
    }

    private static Stream Bounded(Stream source, long packedBytes)
    {
        Stream text = new MemoryStream();
        try
        {
            byte[] buffer = new byte[Chunk];
            for (int read = source.Read(buffer); read > 0; read = source.Read(buffer))
            {
                Check(text.Length + read, packedBytes);
                if (text is MemoryStream && text.Length + read > PackedLimits.MemoryBytes)
                {
                    text = ToDisk(text);
                }

                text.Write(buffer, 0, read);
            }

            text.Position = 0;
            return text;
        }
        catch (InvalidDataException)
        {
            text.Dispose();
            throw Damaged();
        }
        catch
        {
            text.Dispose();
            throw;
        }
    }

    /// <summary>Checks what comes out against the bounds.</summary>
    /// <param name="bytes">So far. [bytes]</param>
    /// <param name="packedBytes">What it comes from. [bytes]</param>
    public static void Check(long bytes, long packedBytes)
    {
        if (bytes > PackedLimits.TextBytes)
        {
            throw new UnpackException($"more than {PackedLimits.TextBytes >> 30} GiB of text", "less", "Export shorter periods.");
        }

        if (bytes > PackedLimits.FreeBytes && bytes > PackedLimits.Growth * Math.Max(1, packedBytes))
        {
            throw new UnpackException($"a text more than {PackedLimits.Growth} times as large as what it is packed in", "a log", "Look where the file comes from. If it is sound, unpack it and name the text under files.");
        }
    }

    /// <summary>A stream of a file that is gone once it is closed.</summary>
    public static Stream ToDisk(Stream memory)
    {
        var file = new FileStream(Path.Combine(Path.GetTempPath(), "climatelens-" + Path.GetRandomFileName()), new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Share = FileShare.None,
            Options = FileOptions.DeleteOnClose,
        });
        memory.Position = 0;
        memory.CopyTo(file);
        memory.Dispose();
        return file;
    }

    /// <summary>The last four bytes tell the length of the last member [RFC1952]; a file cut short ends in anything else.</summary>
    private static bool IsCutShort(FileStream file, long length)
    {
        if (file.Length < 18)
        {
            return true;
        }

        Span<byte> tail = stackalloc byte[4];
        file.Position = file.Length - 4;
        file.ReadExactly(tail);
        uint said = System.Buffers.Binary.BinaryPrimitives.ReadUInt32LittleEndian(tail);
        return said > length || (said != (uint)length && !HasSeveralMembers(file));
    }

    /// <summary>Whether a further member begins somewhere: ten bytes of which seven can hardly be there by chance.</summary>
    private static bool HasSeveralMembers(FileStream file)
    {
        file.Position = 1;
        byte[] buffer = new byte[Chunk];
        int held = 0;
        for (int read = file.Read(buffer); read > 0; read = file.Read(buffer, held, buffer.Length - held))
        {
            ReadOnlySpan<byte> piece = buffer.AsSpan(0, held + read);
            for (int at = piece.IndexOf(MemberStart); at >= 0 && at + HeaderBytes <= piece.Length; at = Next(piece, at))
            {
                if (IsHeader(piece[at..]))
                {
                    return true;
                }
            }

            held = Math.Min(HeaderBytes - 1, piece.Length);
            piece[^held..].CopyTo(buffer);
        }

        return false;
    }

    private static int Next(ReadOnlySpan<byte> piece, int at)
    {
        int further = piece[(at + 1)..].IndexOf(MemberStart);
        return further < 0 ? -1 : at + 1 + further;
    }

    private static bool IsHeader(ReadOnlySpan<byte> at) => at[3] < 0x20 && at[8] is 0 or 2 or 4 && at[9] is < 14 or 255;

    private static UnpackException Damaged() => new("a packed file that is damaged or cut short", "a whole one", "Copy or pack it again.");
}
