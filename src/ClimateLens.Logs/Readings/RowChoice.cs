using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Which columns a row of a long table feeds: those whose <c>where</c> it fulfils. Columns that ask for the same fields share
/// one look-up by the texts in them, so that a table of many variables costs no more than one of few.
/// </summary>
internal sealed class RowChoice
{
    private const byte Between = 0x1F;

    private readonly List<(int[] Fields, Dictionary<byte[], int[]> Columns)> _groups = [];
    private readonly bool[] _always;
    private readonly bool[] _taken;
    private byte[] _key = new byte[256];

    private RowChoice(int columns)
    {
        _always = new bool[columns];
        _taken = new bool[columns];
    }

    /// <summary>The choice of an export for a file; null when none of its columns has a condition.</summary>
    public static RowChoice? Of(ExportSettings export, ColumnFinder finder, ReadingColumn[] columns)
    {
        if (export.Columns.All(c => c.Where.IsEmpty))
        {
            return null;
        }

        var choice = new RowChoice(columns.Length);
        foreach (var group in columns.Select((column, index) => (column.Where, Index: index)).GroupBy(c => string.Join((char)Between, c.Where.Select(w => w.Field))))
        {
            choice.Add([.. group], finder);
        }

        return choice;
    }

    /// <summary>Reports the rows that were left to others.</summary>
    public static void Report(RowCounts counts, SetAsideLog aside)
    {
        if (counts.OfOthers > 0)
        {
            aside.Problems.Add((counts.Read == counts.Blank ? ProblemCodes.WhereNothing : ProblemCodes.OtherRows).In(aside.File, null, null, $"{counts.OfOthers} rows that fit no where of the export", ""));
        }
    }

    /// <summary>Reports conditions on columns that the file lacks; false when there are any.</summary>
    public static bool Check(ExportSettings export, ColumnFinder finder, SetAsideLog aside)
    {
        bool sound = true;
        foreach (string field in export.Columns.SelectMany(c => c.Where).Select(w => w.Field).Distinct(StringComparer.Ordinal))
        {
            if (finder.Find(new FieldRef(field, null), ProblemCodes.WhereField, "where", out Problem? problem) < 0)
            {
                aside.Problems.Add(problem!);
                sound = false;
            }
        }

        return sound;
    }

    /// <summary>Whether any column takes the row; which ones, <see cref="Takes"/> tells until the next row.</summary>
    public bool Fits(ExportTable table)
    {
        _always.CopyTo(_taken, 0);
        bool fits = Array.IndexOf(_taken, true) >= 0;
        foreach ((int[] fields, Dictionary<byte[], int[]> columns) in _groups)
        {
            if (columns.GetAlternateLookup<ReadOnlySpan<byte>>().TryGetValue(KeyOf(table, fields), out int[]? taken))
            {
                fits = true;
                foreach (int column in taken)
                {
                    _taken[column] = true;
                }
            }
        }

        return fits;
    }

    /// <summary>Whether a column takes the row.</summary>
    public bool Takes(int column) => _taken[column];

    private void Add((System.Collections.Immutable.ImmutableArray<FieldCondition> Where, int Index)[] columns, ColumnFinder finder)
    {
        if (columns[0].Where.IsEmpty)
        {
            foreach ((_, int index) in columns)
            {
                _always[index] = true;
            }

            return;
        }

        int[] fields = [.. columns[0].Where.Select(w => finder.Find(new FieldRef(w.Field, null), ProblemCodes.WhereField, "where", out _))];
        if (Array.IndexOf(fields, -1) < 0)
        {
            var byText = new Dictionary<byte[], int[]>(new BytesComparer());
            foreach (var same in columns.GroupBy(c => string.Join((char)Between, c.Where.Select(w => w.Text)), StringComparer.Ordinal))
            {
                byText.Add(Encoding.UTF8.GetBytes(same.Key), [.. same.Select(c => c.Index)]);
            }

            _groups.Add((fields, byText));
        }
    }

    private ReadOnlySpan<byte> KeyOf(ExportTable table, int[] fields)
    {
        int length = 0;
        for (int i = 0; i < fields.Length; i++)
        {
            ReadOnlySpan<byte> text = CellText.Trim(table.Field(fields[i]));
            if (length + text.Length + 1 > _key.Length)
            {
                Array.Resize(ref _key, 2 * (length + text.Length + 1));
            }

            if (i > 0)
            {
                _key[length++] = Between;
            }

            text.CopyTo(_key.AsSpan(length));
            length += text.Length;
        }

        return _key.AsSpan(0, length);
    }
}
