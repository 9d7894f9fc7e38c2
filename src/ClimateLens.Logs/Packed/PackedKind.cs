using System.IO.Compression;

namespace ClimateLens.Logs.Packed;

/// <summary>How the text of an export is packed.</summary>
internal enum PackedKind
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>As gzip.</summary>
    Gzip,

    /// <summary>As an entry of a zip archive.</summary>
    Zip,

    /// <summary>As a sheet of a workbook.</summary>
    Workbook,

    /// <summary>As something that is not read.</summary>
    Unknown,
}

/// <summary>Tells how a file is packed by its first bytes, whatever its name.</summary>
internal static class PackedKinds
{
    /// <summary>Bytes that are enough to tell.</summary>
    public const int Probe = 8;

    /// <summary>The kind; a zip archive that is a workbook is told apart by its entries. Leaves the stream at its start.</summary>
    public static PackedKind Of(Stream stream)
    {
        Span<byte> start = stackalloc byte[Probe];
        stream.Position = 0;
        int read = stream.ReadAtLeast(start, Probe, throwOnEndOfStream: false);
        stream.Position = 0;
        return start[..read] switch
        {
            [0x1F, 0x8B, ..] => PackedKind.Gzip,
            [(byte)'P', (byte)'K', 3, 4, ..] or [(byte)'P', (byte)'K', 5, 6, ..] => OfZip(stream),
            [0xD0, 0xCF, 0x11, 0xE0, ..] => PackedKind.Workbook,
            [0x09, 0x00 or 0x02 or 0x04, 0x04 or 0x06, 0x00, ..] => PackedKind.Workbook, // sheets of before 1993
            [(byte)'7', (byte)'z', 0xBC, 0xAF, ..] or [(byte)'R', (byte)'a', (byte)'r', (byte)'!', ..] or [0xFD, (byte)'7', (byte)'z', ..] or [(byte)'B', (byte)'Z', (byte)'h', ..] or [0x28, 0xB5, 0x2F, 0xFD, ..] => PackedKind.Unknown,
            _ => PackedKind.None,
        };
    }

    /// <summary>Whether a file begins as packed ones do. One that cannot be opened does not; opening it again tells why.</summary>
    public static bool MayBePacked(string path)
    {
        try
        {
            using var file = new FileStream(path, new FileStreamOptions { BufferSize = 0, Share = FileShare.ReadWrite | FileShare.Delete });
            Span<byte> start = stackalloc byte[2];
            return file.ReadAtLeast(start, 2, throwOnEndOfStream: false) == 2 && start is [0x1F, 0x8B] or [(byte)'P', (byte)'K'] or [0xD0, 0xCF] or [0x09, 0x00 or 0x02 or 0x04];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static PackedKind OfZip(Stream stream)
    {
        if (ZipEnd.CountOf(stream) > PackedLimits.Entries)
        {
            return PackedKind.Zip; // too long a list to be read into memory, which no workbook has
        }

        try
        {
            using var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
            bool isWorkbook = archive.GetEntry("[Content_Types].xml") is not null && archive.Entries.Any(e => e.FullName.StartsWith("xl/workbook.", StringComparison.Ordinal));
            return isWorkbook ? PackedKind.Workbook : archive.GetEntry("content.xml") is not null && archive.GetEntry("mimetype") is not null ? PackedKind.Unknown : PackedKind.Zip;
        }
        catch (InvalidDataException)
        {
            return PackedKind.Zip; // a damaged one, which unpacking reports
        }
        finally
        {
            stream.Position = 0;
        }
    }
}
