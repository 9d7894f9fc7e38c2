using System.Globalization;
using System.Text;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>From the bytes of a nursery file to its text.</summary>
internal static class TomlSource
{
    /// <summary>Largest nursery file that is read; some 400 houses fit. Every process of a cluster reads it, and a megabyte costs half a second. [byte]</summary>
    public const int MostBytes = 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text without its byte order mark, or null when it cannot be read; the reason is then in the list.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes, FaultList faults)
    {
        if (bytes.Length > MostBytes)
        {
            string size = (bytes.Length / 1048576.0).ToString("0.0", CultureInfo.InvariantCulture);
            faults.Error(FaultCodes.Size, Place.Top, $"the file has {size} MB", "a nursery file of at most 1 MB", "give the nursery file here; the exports are named inside it. More houses than fit go into several nursery files, each with a store and a site of its own.");
            return null;
        }

        if (IsUtf16(bytes))
        {
            faults.Error(FaultCodes.Encoding, Place.Top, "the file is saved as UTF-16", "UTF-8", "save it again with the encoding UTF-8.");
            return null;
        }

        if (bytes.StartsWith("\uFEFF"u8))
        {
            bytes = bytes[3..];
        }

        return DecodeUtf8(bytes, faults);
    }

    private static string? DecodeUtf8(ReadOnlySpan<byte> bytes, FaultList faults)
    {
        string text;
        try
        {
            text = Strict.GetString(bytes);
        }
        catch (DecoderFallbackException fault)
        {
            Place at = PlaceOf(bytes[..Math.Max(0, fault.Index)]);
            string code = bytes[Math.Max(0, fault.Index)].ToString("X2", CultureInfo.InvariantCulture);
            faults.Error(FaultCodes.Encoding, at, $"the byte {code}, which is no UTF-8 text", "UTF-8", "save the file again with the encoding UTF-8.");
            return null;
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            faults.Error(FaultCodes.Empty, Place.Top, "the file is empty", "a [nursery] table, a [[house]] and an [[export]]", "docs/nursery-file.md shows a small one to start from.");
            return null;
        }

        return text;
    }

    private static bool IsUtf16(ReadOnlySpan<byte> bytes)
        => bytes.Length >= 2 && ((bytes[0], bytes[1]) is (0xFF, 0xFE) or (0xFE, 0xFF) || (bytes[0] == 0) != (bytes[1] == 0));

    private static Place PlaceOf(ReadOnlySpan<byte> before)
    {
        int lineStart = before.LastIndexOf((byte)'\n') + 1;
        int column = 1;
        foreach (byte b in before[lineStart..])
        {
            column += (b & 0xC0) == 0x80 ? 0 : 1; // continuation bytes are no characters of their own
        }

        return new Place(before.Count((byte)'\n') + 1, column);
    }
}
