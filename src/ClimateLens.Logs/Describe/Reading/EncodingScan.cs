using System.Globalization;
using System.Text;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Describe.Reading;

/// <summary>Finds a file's encoding from its byte order mark, its NULs and whether all of it is sound UTF-8.</summary>
internal static class EncodingScan
{
    private const int Chunk = 64 << 10;

    /// <summary>Looks at a file.</summary>
    public static EncodingGuess Of(SourceText file)
    {
        byte[] buffer = new byte[Chunk];
        byte[]? start = null;
        var utf8 = new Utf8Tally();
        long length = 0;
        using (Stream stream = new BoundedStream(file.Open(), SourceText.MostBytes))
        {
            int read;
            while ((read = stream.ReadAtLeast(buffer, Chunk, throwOnEndOfStream: false)) > 0)
            {
                start ??= buffer[..read];
                utf8.Add(buffer.AsSpan(0, read));
                length += read;
            }
        }

        if (length < SourceText.MostBytes)
        {
            utf8.End();
        }

        return Judge(start ?? [], utf8) with { Bytes = length };
    }

    private static EncodingGuess Judge(byte[] start, Utf8Tally utf8)
    {
        if (ExportEncodings.ByMark(start) is { } marked)
        {
            string name = marked is not UnicodeEncoding ? "utf-8" : start[0] == 0xFF ? "utf-16le" : "utf-16be";
            return Guess(name, Sureness.Sure, "byte order mark");
        }

        if (Wide(start) is { } wide)
        {
            return Guess(wide, Sureness.Sure, "every second byte is NUL, no byte order mark");
        }

        if (FileMarks.NoText(start) is { } why)
        {
            return Guess("utf-8", Sureness.Unsure, "") with { NoText = why };
        }

        return (utf8.Sound, utf8.Broken) switch
        {
            (0, 0) => Guess("utf-8", Sureness.Sure, "plain ASCII so far") with { IsAscii = true },
            (_, 0) => Guess("utf-8", Sureness.Sure, "all of it is sound UTF-8"),
            var (sound, broken) when sound > 20 * broken => Guess("utf-8", Sureness.Likely, Invariant($"{sound} characters are sound UTF-8, {broken} bytes are not")),
            var (_, broken) => Guess("windows-1252", Sureness.Likely, Invariant($"{broken} bytes are no UTF-8")),
        };
    }

    private static EncodingGuess Guess(string name, Sureness sureness, string evidence) => new(name, ExportEncodings.Find(name)!, sureness, evidence);

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>Text in UTF-16 has its NULs on one side of each pair.</summary>
    private static string? Wide(byte[] start)
    {
        int pairs = start.Length / 2;
        if (pairs < 2)
        {
            return null;
        }

        int even = 0;
        int odd = 0;
        for (int i = 0; i + 1 < start.Length; i += 2)
        {
            even += start[i] == 0 ? 1 : 0;
            odd += start[i + 1] == 0 ? 1 : 0;
        }

        return odd > 0.7 * pairs && even < 0.1 * pairs ? "utf-16le" : even > 0.7 * pairs && odd < 0.1 * pairs ? "utf-16be" : null;
    }
}
