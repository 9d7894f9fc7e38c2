using System.Text;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>An export opened and looked at: text in a known encoding, or a problem.</summary>
/// <param name="stream">The file, at its start.</param>
/// <param name="encoding">Its encoding.</param>
internal sealed class OpenedExport(ExportStream stream, Encoding encoding) : IDisposable
{
    private const int Probe = 64 << 10;

    /// <summary>The file.</summary>
    public Stream Stream => stream;

    /// <summary>Its encoding.</summary>
    public Encoding Encoding => encoding;

    /// <summary>SHA-256 of its bytes, lower-case hex; what was not read yet is read now.</summary>
    /// <exception cref="ExportReadException">It cannot be read to its end.</exception>
    public string Sha256() => stream.Sha256();

    /// <summary>Whether the file holds nothing.</summary>
    public bool IsEmpty => stream.Length == 0;

    /// <summary>Opens a file; null and what is wrong when it can't be read at all.</summary>
    public static OpenedExport? TryOpen(ExportFile file, DialectSettings dialect, out Problem? problem)
    {
        problem = null;
        if (Directory.Exists(file.Path))
        {
            problem = ProblemCodes.Folder.In(file.Name, null, null, "a folder", "a file");
            return null;
        }

        FileStream stream;
        try
        {
            stream = new FileStream(file.Path, new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 0, Share = FileShare.ReadWrite | FileShare.Delete });
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            problem = ProblemCodes.NotFound.In(file.Name, null, null, "no such file", "a file");
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problem = ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be opened", "a file that can be read");
            return null;
        }

        problem = Examine(stream, file.Name, dialect, out Encoding? encoding);
        if (problem is not null || encoding is null)
        {
            stream.Dispose();
            return null;
        }

        return new OpenedExport(new ExportStream(stream), encoding);
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    private static Problem? Examine(FileStream stream, string name, DialectSettings dialect, out Encoding? encoding)
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

        return encoding is UnicodeEncoding ? null : Binary(start, name);
    }

    private static Problem? Binary(ReadOnlySpan<byte> start, string name)
    {
        if (start is [(byte)'P', (byte)'K', 3, 4, ..] or [0xD0, 0xCF, 0x11, 0xE0, ..])
        {
            return ProblemCodes.Binary.In(name, 1, null, "a workbook or archive", "text", "Open it and save the sheet as CSV.");
        }

        if (start is [0x1F, 0x8B, ..])
        {
            return ProblemCodes.Binary.In(name, 1, null, "a compressed file", "text", "Unpack it first.");
        }

        // Lone NUL bytes may come from a torn row or an unwritten tail; a file that starts with them is no text.
        int nuls = start[..Math.Min(start.Length, 4096)].Count((byte)0);
        if (nuls == 0)
        {
            return null;
        }

        int line = start[..start.IndexOf((byte)0)].Count((byte)'\n') + 1;
        bool wide = nuls * 3 > Math.Min(start.Length, 4096);
        string mend = wide ? "If it is text, set encoding to utf-16le or utf-16be." : ProblemCodes.Binary.Mend;
        return nuls * 20 > Math.Min(start.Length, 4096) || line == 1 ? ProblemCodes.Binary.In(name, line, null, "NUL bytes", "text", mend) : null;
    }
}
