using System.IO.Compression;
using System.Text;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>Encodes and packs the text of an export.</summary>
internal static class MadePacking
{
    /// <summary>The text's bytes.</summary>
    public static byte[] Encode(string text, string encoding)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        Encoding chosen = encoding switch
        {
            "bom" => new UTF8Encoding(true),
            "utf-16le" => new UnicodeEncoding(false, true),
            "utf-16be" => new UnicodeEncoding(true, true),
            "windows-1252" => Encoding.GetEncoding(1252),
            _ => new UTF8Encoding(false),
        };
        return [.. chosen.GetPreamble(), .. chosen.GetBytes(text)];
    }

    /// <summary>Packs bytes; the name gets the ending.</summary>
    public static (string Name, byte[] Bytes) Pack(byte[] bytes, string packing)
    {
        using var packed = new MemoryStream();
        switch (packing)
        {
            case "gz":
                using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
                {
                    gzip.Write(bytes);
                }

                return ("made.csv.gz", packed.ToArray());
            case "zip":
                using (var zip = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
                using (Stream entry = zip.CreateEntry("made.csv").Open())
                {
                    entry.Write(bytes);
                }

                return ("made.zip", packed.ToArray());
            default:
                return ("made.csv", bytes);
        }
    }
}
