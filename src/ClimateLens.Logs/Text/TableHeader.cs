using System.Text;
using System.Text.Unicode;
using ClimateLens.Logs.Cells;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>The names of a table's columns, out of one header row or several: names below each other are joined by a blank.</summary>
internal sealed class TableHeader
{
    private readonly List<byte[]> _rows = [];
    private readonly List<string> _names = [];
    private readonly List<string> _single = []; // the names of each row by itself
    private HashSet<string>? _known;

    /// <summary>Names by column, trimmed.</summary>
    public string[] Names => [.. _names];

    /// <summary>Whether all of it is text.</summary>
    public bool IsText { get; private set; } = true;

    /// <summary>Adds a header row.</summary>
    public void Add(RowReader row)
    {
        _rows.Add(row.Raw.ToArray());
        IsText &= Utf8.IsValid(row.Raw);
        for (int i = 0; i < row.FieldCount; i++)
        {
            if (i == _names.Count)
            {
                _names.Add("");
            }

            string name = TextOf(row, i);
            _single.Add(name);
            _names[i] = _names[i].Length == 0 || name.Length == 0 ? _names[i] + name : $"{_names[i]} {name}";
        }
    }

    /// <summary>Rows that it stands in.</summary>
    public int RowCount => _rows.Count;

    /// <summary>Whether it stands in several rows.</summary>
    public bool HasSeveralRows => _rows.Count > 1;

    /// <summary>Which of the header's rows a row is, byte for byte, counted from 0; -1 for none.</summary>
    public int PlaceOf(ReadOnlySpan<byte> raw)
    {
        for (int i = 0; i < _rows.Count; i++)
        {
            if (raw.SequenceEqual(_rows[i]))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>
    /// Whether a row names columns: it holds two names of this header that make up half of it, or one such name and no number
    /// where there should be many. No row of readings does.
    /// </summary>
    public bool LooksLike(RowReader row)
    {
        _known ??= new HashSet<string>(_single.Where(name => name.Length > 0), StringComparer.OrdinalIgnoreCase);
        int named = 0;
        int filled = 0;
        int numbers = 0;
        for (int i = 0; i < row.FieldCount; i++)
        {
            string text = TextOf(row, i);
            filled += text.Length > 0 ? 1 : 0;
            bool isNumber = text.Length > 0 && double.TryParse(text.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture, out _);
            numbers += isNumber ? 1 : 0;
            named += text.Length > 0 && !isNumber && _known.Contains(text) ? 1 : 0;
        }

        return (named >= 2 && 2 * named >= Math.Min(filled, _names.Count))
            || (named >= 1 && numbers == 0 && filled >= 2 && 2 * filled >= _names.Count);
    }

    /// <summary>Whether columns can be found by it: named ones by their name, placed ones under the same name in the same place.</summary>
    public bool Serves(IReadOnlyList<FieldRef> wanted, TableHeader before)
        => wanted.All(field => field.Position is int position
            ? NameAt(position) == before.NameAt(position) && position <= _names.Count
            : field.Name is null || _names.Count(name => string.Equals(name, field.Name, StringComparison.OrdinalIgnoreCase)) == 1);

    /// <summary>Whether it has one of the names.</summary>
    public bool HasAny(IReadOnlyList<string> names) => names.Any(name => _names.Contains(name, StringComparer.OrdinalIgnoreCase));

    private string NameAt(int position) => position <= _names.Count ? _names[position - 1] : "";

    private static string TextOf(RowReader row, int field) => Encoding.UTF8.GetString(CellText.Trim(row.Field(field)));
}
