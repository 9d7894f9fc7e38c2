using System.Text;

namespace ClimateLens.Logs.Text;

/// <summary>The encodings of exports by their names in the nursery file.</summary>
internal static class ExportEncodings
{
    static ExportEncodings() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>The encoding of a name; null for one that is not known.</summary>
    public static Encoding? Find(string name) => name switch
    {
        "utf-8" => new UTF8Encoding(false),
        "utf-16le" => new UnicodeEncoding(false, false),
        "utf-16be" => new UnicodeEncoding(true, false),
        "windows-1252" => Encoding.GetEncoding(1252),
        "iso-8859-1" => Encoding.Latin1,
        _ => null,
    };

    /// <summary>The encoding that a byte order mark names; null without one.</summary>
    public static Encoding? ByMark(ReadOnlySpan<byte> start)
    {
        return start switch
        {
            [0xEF, 0xBB, 0xBF, ..] => new UTF8Encoding(false),
            [0xFF, 0xFE, ..] => new UnicodeEncoding(false, true),
            [0xFE, 0xFF, ..] => new UnicodeEncoding(true, true),
            _ => null,
        };
    }
}
