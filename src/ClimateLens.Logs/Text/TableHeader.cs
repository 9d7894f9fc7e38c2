using System.Text;
using System.Text.Unicode;
using ClimateLens.Logs.Cells;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>The names of a table's columns, out of one header row or several: names below each other are joined by a blank.</summary>
internal sealed class TableHeader
{
    // A file that changes its header more often than this is no log; its repeats are then set aside as rows.
    private const int MostRows = 64;

    private readonly List<byte[]> _rows = [];
    private readonly List<string> _names = [];
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
            _names[i] = _names[i].Length == 0 || name.Length == 0 ? _names[i] + name : $"{_names[i]} {name}";
        }
    }

    /// <summary>Whether a row is one of the header's, byte for byte.</summary>
    public bool IsAgain(ReadOnlySpan<byte> raw)
    {
        foreach (byte[] row in _rows)
        {
            if (raw.SequenceEqual(row))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a row is made of names of this header, at least two and half of its fields: no row of readings is.</summary>
    public bool LooksLike(RowReader row)
    {
        _known ??= new HashSet<string>(_names, StringComparer.OrdinalIgnoreCase);
        int named = 0;
        int filled = 0;
        for (int i = 0; i < row.FieldCount; i++)
        {
            string text = TextOf(row, i);
            filled += text.Length > 0 ? 1 : 0;
            named += text.Length > 0 && !double.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out _) && _known.Contains(text) ? 1 : 0;
        }

        return named >= 2 && 2 * named >= Math.Min(filled, _names.Count);
    }

    /// <summary>Whether columns can be found by it: named ones by their name, placed ones under the same name in the same place.</summary>
    public bool Serves(IReadOnlyList<FieldRef> wanted, TableHeader before)
        => wanted.All(field => field.Position is int position
            ? NameAt(position) == before.NameAt(position) && position <= _names.Count
            : field.Name is null || _names.Count(name => string.Equals(name, field.Name, StringComparison.OrdinalIgnoreCase)) == 1);

    /// <summary>Takes over the names of another one.</summary>
    public void Become(TableHeader other)
    {
        _known = null;
        _rows.AddRange(other._rows.Take(MostRows - _rows.Count));
        _names.Clear();
        _names.AddRange(other._names);
    }

    private string NameAt(int position) => position <= _names.Count ? _names[position - 1] : "";

    private static string TextOf(RowReader row, int field) => Encoding.UTF8.GetString(CellText.Trim(row.Field(field)));
}
