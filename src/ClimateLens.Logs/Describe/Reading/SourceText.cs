using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Reading;

/// <summary>The text of one file, of an entry of an archive, or of a sheet of a workbook, which can be walked over several times.</summary>
/// <param name="Path">Where the file lies.</param>
/// <param name="Name">How the user named it; of an entry with its name behind it.</param>
/// <param name="Bytes">Length of the text. [bytes]</param>
/// <param name="Open">Opens the bytes at their start; the caller closes them.</param>
internal sealed record SourceText(string Path, string Name, long Bytes, Func<Stream> Open)
{
    /// <summary>The longest part of a file that is looked at; what lies behind it is not described. [bytes]</summary>
    public const long MostBytes = 256L << 20;

    /// <summary>The entry of the archive at <see cref="Path"/>, or null.</summary>
    public string? Entry { get; init; }

    /// <summary>All entries of that archive that the import would take.</summary>
    public ImmutableArray<string> Entries { get; init; } = [];

    /// <summary>Whether it is the text of a workbook's sheet.</summary>
    public bool IsWorkbook { get; init; }

    /// <summary>Name of the sheet, where the workbook has several with rows; else null.</summary>
    public string? Sheet { get; init; }

    /// <summary>Whether it came through a pipe: the import will find it elsewhere.</summary>
    public bool IsPiped { get; init; }

    /// <summary>How the user named the file.</summary>
    public string FileName => (Entry ?? Sheet) is { } part ? Name[..^(part.Length + 1)] : Name;

    /// <summary>The file's name without folders; nothing for a pipe, whose name says nothing.</summary>
    public string ShortName => IsPiped ? "" : Name[(Name.AsSpan().LastIndexOfAny('/', '\\') + 1)..];

    /// <summary>What to call it.</summary>
    public string Label => IsPiped ? "a pipe" : ShortName;

    /// <summary>Walks over the lines, up to <see cref="MostBytes"/>.</summary>
    public IEnumerable<TextLine> Lines(EncodingGuess encoding)
    {
        using Stream stream = new BoundedStream(Open(), MostBytes);
        using var reader = new StreamReader(stream, encoding.Encoding, detectEncodingFromByteOrderMarks: true, 64 << 10);
        var lines = new LineReader(reader);
        while (lines.Next() is { } line)
        {
            yield return line;
        }
    }
}

/// <summary>A line of a file.</summary>
/// <param name="Number">Counted from 1 over all lines.</param>
/// <param name="Text">Without its line end; cut where it is longer than any row of a table should be.</param>
internal readonly record struct TextLine(int Number, string Text)
{
    /// <summary>Whether nothing stands in it but blanks and NULs of a torn file.</summary>
    public bool IsBlank => Text.AsSpan().Trim("\0 \t\u00A0").IsEmpty;
}
