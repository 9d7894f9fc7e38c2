using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Times;

/// <summary>One field of a row, or several joined by one space.</summary>
internal sealed class JoinedFields
{
    private const int LongestField = 64;

    private readonly int[] _fields;
    private readonly byte[] _joined;

    private JoinedFields(int[] fields)
    {
        _fields = fields;
        _joined = new byte[fields.Length * (LongestField + 1)];
    }

    /// <summary>0-based place of the first.</summary>
    public int First => _fields[0];

    /// <summary>Finds the columns; null and what is wrong when one is not there.</summary>
    public static JoinedFields? Bind(IReadOnlyList<FieldRef> columns, string purpose, ColumnFinder finder, out Problem? problem)
    {
        problem = null;
        int[] fields = new int[columns.Count];
        for (int i = 0; i < fields.Length && problem is null; i++)
        {
            fields[i] = finder.Find(columns[i], ProblemCodes.TimeColumn, purpose, out problem);
        }

        return problem is null ? new JoinedFields(fields) : null;
    }

    /// <summary>The text in the current row; false when it is too long for a time.</summary>
    public bool TryText(ExportTable table, out ReadOnlySpan<byte> text)
    {
        text = CellText.Trim(table.Field(_fields[0]));
        if (_fields.Length == 1)
        {
            return true;
        }

        int length = 0;
        foreach (int field in _fields)
        {
            ReadOnlySpan<byte> part = CellText.Trim(table.Field(field));
            if (part.Length > LongestField)
            {
                return false;
            }

            part.CopyTo(_joined.AsSpan(length));
            length += part.Length;
            _joined[length++] = (byte)' ';
        }

        text = _joined.AsSpan(0, length - 1);
        return true;
    }

    /// <summary>What stands in the current row, for messages.</summary>
    public byte[] Found(ExportTable table)
    {
        var found = new List<byte>();
        foreach (int field in _fields)
        {
            found.AddRange(found.Count == 0 ? [] : " "u8);
            found.AddRange(table.Field(field));
        }

        return [.. found];
    }
}
