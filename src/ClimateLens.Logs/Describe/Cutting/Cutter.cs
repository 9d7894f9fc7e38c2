namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>Cuts a line into cells.</summary>
internal abstract class Cutter
{
    /// <summary>The cells, trimmed; at least one.</summary>
    public abstract string[] Cut(string line);

    /// <summary>Blanks and no-break spaces that stand around cells.</summary>
    protected static ReadOnlySpan<char> Blanks => " \t\u00A0\0";
}

/// <summary>One character between the cells, quotes around some.</summary>
/// <param name="delimiter">Between cells.</param>
/// <param name="quote">Around cells; doubled inside.</param>
internal sealed class DelimiterCutter(char delimiter, char quote) : Cutter
{
    /// <inheritdoc/>
    public override string[] Cut(string line)
    {
        var cells = new List<string>();
        int at = 0;
        do
        {
            cells.Add(Next(line, ref at));
        }
        while (at <= line.Length);

        return [.. cells];
    }

    private string Next(string line, ref int at)
    {
        int start = at;
        while (start < line.Length && line[start] != delimiter && Blanks.Contains(line[start]))
        {
            start++;
        }

        if (start < line.Length && line[start] == quote)
        {
            return Quoted(line, start + 1, ref at);
        }

        int end = line.IndexOf(delimiter, at);
        end = end < 0 ? line.Length : end;
        string cell = line.AsSpan(at, end - at).Trim(Blanks).ToString();
        at = end + 1;
        return cell;
    }

    private string Quoted(string line, int start, ref int at)
    {
        int close = start;
        while ((close = line.IndexOf(quote, close)) >= 0 && close + 1 < line.Length && line[close + 1] == quote)
        {
            close += 2;
        }

        int inner = close < 0 ? line.Length : close;
        int end = close < 0 ? line.Length : line.IndexOf(delimiter, close);
        at = (end < 0 ? line.Length : end) + 1;
        return line[start..inner].Replace($"{quote}{quote}", $"{quote}", StringComparison.Ordinal).AsSpan().Trim(Blanks).ToString();
    }
}

/// <summary>One blank or more between the cells, blanks at the start left out.</summary>
/// <param name="quote">Around cells that hold blanks.</param>
internal sealed class BlankCutter(char quote) : Cutter
{
    /// <inheritdoc/>
    public override string[] Cut(string line)
    {
        var cells = new List<string>();
        int at = 0;
        while (true)
        {
            while (at < line.Length && Blanks.Contains(line[at]))
            {
                at++;
            }

            if (at == line.Length)
            {
                return cells.Count == 0 ? [""] : [.. cells];
            }

            cells.Add(Next(line, ref at));
        }
    }

    private string Next(string line, ref int at)
    {
        int start = at;
        int close = line[start] == quote ? line.IndexOf(quote, start + 1) : -1;
        if (close > 0)
        {
            at = close + 1;
            return line[(start + 1)..close].Trim();
        }

        while (at < line.Length && !Blanks.Contains(line[at]))
        {
            at++;
        }

        return line[start..at];
    }
}

/// <summary>Cells of fixed widths.</summary>
/// <param name="widths">Width of each cell; what lies behind the last belongs to it. [characters]</param>
internal sealed class WidthCutter(IReadOnlyList<int> widths) : Cutter
{
    /// <inheritdoc/>
    public override string[] Cut(string line)
    {
        string[] cells = new string[widths.Count];
        int at = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            int end = i == cells.Length - 1 ? line.Length : Math.Min(line.Length, at + widths[i]);
            cells[i] = at >= line.Length ? "" : line.AsSpan(at, end - at).Trim(Blanks).ToString();
            at += widths[i];
        }

        return cells;
    }
}
