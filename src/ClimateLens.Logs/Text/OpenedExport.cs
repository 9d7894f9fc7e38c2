using System.Text;
using ClimateLens.Logs.Packed;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>An export opened, unpacked and looked at: text in a known encoding, or a problem.</summary>
/// <param name="stream">Its text, at its start.</param>
/// <param name="encoding">Its encoding.</param>
/// <param name="dialect">How it is cut into fields.</param>
internal sealed class OpenedExport(ExportStream stream, Encoding encoding, DialectSettings dialect) : IDisposable
{
    private const int Probe = 64 << 10;
    private string? _sha256;

    /// <summary>Its text.</summary>
    public Stream Stream => stream;

    /// <summary>Its encoding.</summary>
    public Encoding Encoding => encoding;

    /// <summary>How it is cut: as the export says, but for workbooks.</summary>
    public DialectSettings Dialect => dialect;

    /// <summary>NUL bytes at its end, which are no text. [bytes]</summary>
    public long NulTailBytes { get; private init; }

    /// <summary>Whether it is the text of a workbook's sheet, whose dates are ISO 8601 whatever the format of the export.</summary>
    public bool IsWorkbook { get; private init; }

    /// <summary>
    /// SHA-256, lower-case hex: of the text as it was before it was packed, so that a log that is packed later is known again; of a
    /// workbook as it lies. What was not read yet is read now.
    /// </summary>
    /// <exception cref="ExportReadException">It cannot be read to its end.</exception>
    public string Sha256() => _sha256 ?? stream.Sha256();

    /// <summary>Whether no line end stands behind its last line, so that more of it may come. To be asked when all of it was read.</summary>
    /// <exception cref="ExportReadException">It cannot be read to its end.</exception>
    public bool EndsOpen()
    {
        Span<byte> end = stackalloc byte[2];
        long length = Math.Min(stream.Length, stream.TextBytes);
        stream.Position = Math.Max(0, length - end.Length);
        int read = stream.ReadAtLeast(end, end.Length, throwOnEndOfStream: false);
        return read > 0 && end[..read].IndexOfAny((byte)'\n', (byte)'\r') < 0;
    }

    private bool Reads(Stream disk) => stream.IsOver(disk);

    /// <summary>Whether it holds nothing.</summary>
    public bool IsEmpty => stream.Length == NulTailBytes;

    /// <summary>Opens a file; null and what is wrong when it can't be read at all.</summary>
    public static OpenedExport? TryOpen(ExportFile file, DialectSettings dialect, out Problem? problem)
    {
        FileStream? disk = DiskFile.TryOpen(file, out problem);
        if (disk is null)
        {
            return null;
        }

        try
        {
            OpenedExport? opened = TryUnpack(disk, file, dialect, out problem);
            if (opened?.Reads(disk) != true)
            {
                disk.Dispose();
            }

            return opened;
        }
        catch (UnpackException e)
        {
            problem = ProblemCodes.Packed.In(file.Name, null, null, e.Found, e.Expected, e.Mend);
        }
        catch (IOException)
        {
            problem = ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be read to its end", "a file that can be read, and room on the disk to unpack it");
        }

        disk.Dispose();
        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    /// <summary>What is wrong with a file that is packed in a way that is not read.</summary>
    public static Problem NotRead(ExportFile file, PackedKind kind) => ProblemCodes.Binary.In(
        file.Name, 1, null, kind == PackedKind.Zip ? "a zip archive" : "an archive or document of a kind that is not read", "text, .gz, .zip, .xlsx or .xls",
        kind == PackedKind.Zip ? "Give it a name that ends in .zip." : "Unpack it, or save the sheet as .xlsx or CSV.");

    private static OpenedExport? TryUnpack(FileStream disk, ExportFile file, DialectSettings dialect, out Problem? problem)
    {
        PackedKind kind = file.Entry is null ? PackedKinds.Of(disk) : PackedKind.Zip; // an entry was found in an archive's list already
        if (kind == PackedKind.Unknown || (kind == PackedKind.Zip && file.Entry is null))
        {
            problem = NotRead(file, kind);
            return null;
        }

        string? sha256 = kind == PackedKind.Workbook ? Store.ContentHash.Of(disk) : null;
        disk.Position = 0;
        Stream text = kind switch
        {
            PackedKind.Gzip => Unpacking.Gzip(disk),
            PackedKind.Zip => Unpacking.Entry(disk, file.Entry!),
            PackedKind.Workbook => WorkbookText.Of(disk, dialect),
            _ => disk,
        };
        DialectSettings cut = kind == PackedKind.Workbook ? WorkbookText.Dialect(dialect) : dialect;
        problem = Examine(text, file.Name, cut, out Encoding? encoding);
        if (problem is null && encoding is not null)
        {
            long tail = encoding is UnicodeEncoding ? 0 : NulTail.LengthOf(text);
            return new OpenedExport(new ExportStream(text) { TextBytes = tail > 0 ? text.Length - tail : long.MaxValue }, encoding, cut) { NulTailBytes = tail, IsWorkbook = kind == PackedKind.Workbook, _sha256 = sha256 };
        }

        text.Dispose();
        return null;
    }

    private static Problem? Examine(Stream stream, string name, DialectSettings dialect, out Encoding? encoding)
    {
        encoding = null;
        if (stream.Length > TextLimits.FileBytes)
        {
            return ProblemCodes.TooLarge.In(name, null, null, $"{stream.Length >> 20} MiB", "at most 4096 MiB");
        }

        byte[] start = new byte[Math.Min(Probe, stream.Length)];
        stream.ReadExactly(start);
        stream.Position = 0;
        encoding = ExportEncodings.ByMark(start) ?? ExportEncodings.Find(dialect.Encoding);
        if (encoding is null)
        {
            return ProblemCodes.Binary.In(name, null, null, $"encoding {SafeText.Quote(dialect.Encoding)}", "utf-8, utf-16le, utf-16be, windows-1252 or iso-8859-1");
        }

        return encoding is UnicodeEncoding ? null : NoText.FaultOf(start, name);
    }
}
