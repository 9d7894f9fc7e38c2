namespace ClimateLens.Logs.Describe.Reading;

/// <summary>Knows files that are no text by how they begin.</summary>
internal static class FileMarks
{
    private static readonly (byte[] Start, string What)[] Known =
    [
        ([(byte)'P', (byte)'K', 3, 4], "a workbook or zip archive"),
        ([0xD0, 0xCF, 0x11, 0xE0], "a workbook of an older kind"),
        ([0x1F, 0x8B], "a file compressed with gzip"),
        ("%PDF"u8.ToArray(), "a PDF document"),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], "a picture"),
        ([0xFF, 0xD8, 0xFF], "a picture"),
        ("SQLite format 3"u8.ToArray(), "a database"),
        ("{\\rtf"u8.ToArray(), "a word processor's document"),
        ("PAR1"u8.ToArray(), "a Parquet file"),
    ];

    /// <summary>What a file is that is no text, by its first bytes; null for text.</summary>
    public static string? NoText(ReadOnlySpan<byte> start)
    {
        foreach ((byte[] mark, string what) in Known)
        {
            if (start.StartsWith(mark))
            {
                return what;
            }
        }

        ReadOnlySpan<byte> text = start.TrimEnd((byte)0); // the unwritten tail of a torn file
        int odd = 0;
        foreach (byte b in text)
        {
            odd += b is < 9 or (> 13 and < 27) ? 1 : 0;
        }

        return odd * 50 > text.Length ? "bytes that are no text" : null;
    }
}
