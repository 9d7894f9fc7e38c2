namespace ClimateLens.Logs.Tests.Made;

/// <summary>What the cells of a made table look like, so that a torn row which looks just like a whole one is known: no reader could tell.</summary>
internal sealed class MadeCells
{
    private const int RowsToLearn = 80;
    private const int NearRows = 8; // rows out of order by less are left where they are

    private readonly char _delimiter;
    private readonly int _stampCells;
    private readonly bool _counts;
    private readonly Dictionary<string, int> _stamps = [];
    private readonly HashSet<string>[] _shapes;
    private readonly bool[] _whole;
    private readonly string _gap;
    private readonly int _values;

    /// <summary>Looks at all rows as they were meant to be.</summary>
    public MadeCells(MakerStyle style, int stampCells, IReadOnlyList<string> lines)
    {
        _delimiter = style.Delimiter;
        _gap = style.Gap;
        _stampCells = stampCells;
        _counts = style.Stamp.Name is "serial" or "seconds" or "milliseconds";
        _values = Cut(lines[0]).Count - (style.MarkAtEnd ? 1 : 0);
        _shapes = [.. Enumerable.Range(0, Cut(lines[0]).Count).Select(_ => new HashSet<string>())];
        for (int i = 0; i < lines.Count; i++)
        {
            List<string> cells = Cut(lines[i]);
            _stamps.TryAdd(StampOf(cells), i);
            for (int c = 0; c < _shapes.Length; c++)
            {
                _shapes[c].Add(ShapeOf(c, cells[c]));
            }
        }

        _whole = [.. _shapes.Select((shapes, c) => c < _stampCells || shapes.Any(s => s.Contains('.', StringComparison.Ordinal)))];
    }

    /// <summary>Whether a line looks like a whole row that stands in its place: its cells have the usual form, and its time is that of a neighbour.</summary>
    /// <param name="line">The line.</param>
    /// <param name="row">The row in whose place it stands.</param>
    /// <param name="gone">Rows behind it that are gone with it.</param>
    public bool LooksWhole(string line, int row, int gone)
    {
        List<string> cells = Cut(line);
        if (cells.Count != _shapes.Length || !Enumerable.Range(0, cells.Count).All(c => IsUsual(c, ShapeOf(c, cells[c]), row)))
        {
            return false;
        }

        return _stamps.TryGetValue(StampOf(cells), out int place) ? Math.Abs(place - row) <= gone + NearRows : _counts;
    }

    /// <summary>Decimals tell where enough numbers showed that all have as many; whole numbers may have some at any time.</summary>
    private bool IsUsual(int column, string shape, int row)
        => shape == "gap" || _shapes[column].Contains(shape) || ((row < RowsToLearn || !_whole[column]) && _shapes[column].Any(s => Undotted(s) == Undotted(shape)));

    private static string Undotted(string shape) => shape.Replace(".", "", StringComparison.Ordinal).Replace("9", "", StringComparison.Ordinal);

    /// <summary>The last cell of a line that has all cells; else nothing.</summary>
    public string LastOf(string line) => Cut(line) is var cells && cells.Count >= _values ? cells[_values - 1] : "";

    private string StampOf(List<string> cells) => string.Join(' ', cells.Take(_stampCells));

    private List<string> Cut(string line)
    {
        var cells = new List<string> { "" };
        bool quoted = false;
        foreach (char c in line)
        {
            quoted ^= c == '"';
            if (c == _delimiter && !quoted)
            {
                cells.Add("");
            }
            else
            {
                cells[^1] += c;
            }
        }

        return cells;
    }

    /// <summary>Digits are alike in a time; a number is what its decimals and its quotes are, whatever its size.</summary>
    private string ShapeOf(int column, string cell)
    {
        string digits = new([.. cell.Select(c => char.IsAsciiDigit(c) ? '9' : char.IsLetter(c) ? 'a' : c)]);
        if (column < _stampCells || cell.Length == 0 || cell.Trim('"') == _gap)
        {
            return column < _stampCells ? digits : "gap";
        }

        int mark = digits.LastIndexOfAny(['.', ',']);
        string whole = mark < 0 ? digits : digits[..mark];
        bool number = digits.All(c => c is '9' or '.' or ',' or '-' or '"') && whole.Contains('9', StringComparison.Ordinal);
        return number ? $"{(cell.StartsWith('"') ? "\"" : "")}{(whole.Contains('.', StringComparison.Ordinal) || whole.Contains(',', StringComparison.Ordinal) ? "grouped" : "")}{(mark < 0 ? "" : digits[mark..].Replace(',', '.'))}{(cell.Length > 1 && cell.EndsWith('"') ? "\"" : "")}" : digits;
    }
}
