using System.Text;

namespace ClimateLens.Logs.Cells;

/// <summary>What cells have in common.</summary>
internal static class CellText
{
    /// <summary>Takes off blanks of any kind at both ends, also those without width.</summary>
    public static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> cell)
    {
        while (cell.Length > 0 && BlankAtStart(cell) is int first and > 0)
        {
            cell = cell[first..];
        }

        while (cell.Length > 0 && BlankAtEnd(cell) is int last and > 0)
        {
            cell = cell[..^last];
        }

        return cell;
    }

    /// <summary>
    /// Takes off one pair of quotes that the export's own quoting left standing, as in <c>'21.5'</c> or <c>="21.5"</c>, and the lone
    /// apostrophe that spreadsheets put before a number kept as text.
    /// </summary>
    public static ReadOnlySpan<byte> Unwrap(ReadOnlySpan<byte> cell)
    {
        ReadOnlySpan<byte> inner = cell.Length > 2 && cell[0] == (byte)'=' && cell[1] is (byte)'"' or (byte)'\'' ? cell[1..] : cell;
        if (inner.Length >= 2 && inner[0] is (byte)'"' or (byte)'\'' && inner[^1] == inner[0])
        {
            return Trim(inner[1..^1]);
        }

        return cell.Length > 1 && cell[0] == (byte)'\'' ? Trim(cell[1..]) : cell;
    }

    /// <summary>
    /// Lower case, accents taken off, each stretch of blanks one blank: in this form words are compared. By a table of the letters of
    /// western Europe, since the system's own folding differs between machines.
    /// </summary>
    public static string Folded(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune))
            {
                folded.Append(folded.Length > 0 && folded[^1] != ' ' ? " " : "");
            }
            else if (!IsSpecialBlank(rune) && rune.Value is not (>= 0x300 and <= 0x36F))
            {
                Rune lower = Rune.ToLowerInvariant(rune);
                folded.Append(lower.Value switch
                {
                    >= 'à' and <= 'å' => "a",
                    'æ' => "ae",
                    'ç' => "c",
                    >= 'è' and <= 'ë' => "e",
                    >= 'ì' and <= 'ï' => "i",
                    'ñ' => "n",
                    (>= 'ò' and <= 'ö') or 'ø' => "o",
                    >= 'ù' and <= 'ü' => "u",
                    'ß' => "ss",
                    'œ' => "oe",
                    _ => lower.ToString(),
                });
            }
        }

        return folded.ToString().TrimEnd(' ');
    }

    /// <summary>Whether it is a blank that no keyboard writes: no-break, thin or figure space and their kin.</summary>
    public static bool IsSpecialBlank(Rune rune) => rune.Value > 0x7F && (Rune.IsWhiteSpace(rune) || rune.Value is 0xFEFF or 0x200B or 0x2060);

    private static int BlankAtStart(ReadOnlySpan<byte> cell)
    {
        if (cell[0] < 0x80)
        {
            return cell[0] is (byte)' ' or (byte)'\t' ? 1 : 0;
        }

        Rune.DecodeFromUtf8(cell, out Rune rune, out int length);
        return IsSpecialBlank(rune) ? length : 0;
    }

    private static int BlankAtEnd(ReadOnlySpan<byte> cell)
    {
        if (cell[^1] < 0x80)
        {
            return cell[^1] is (byte)' ' or (byte)'\t' ? 1 : 0;
        }

        Rune.DecodeLastFromUtf8(cell, out Rune rune, out int length);
        return IsSpecialBlank(rune) ? length : 0;
    }
}
