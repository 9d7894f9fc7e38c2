using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>The keys of [[export]] for tables of another shape than one header row and a mark between fields.</summary>
internal static class ShapeKeys
{
    private const int WidestColumn = 10_000;
    private const int MostHeaderRows = 10;
    private const int LastSheet = 1_000;

    /// <summary>Widths of fixed-width columns; empty when left out or wrong.</summary>
    public static ImmutableArray<int> Widths(TableReader export)
    {
        if (!export.Has("widths"))
        {
            return [];
        }

        export.NotHere("delimiter", "stands beside widths", "keep one of them: widths for a file whose columns have a fixed width, delimiter for one with a mark between fields.");
        return Numbers(export, "widths", 1, WidestColumn, "[16, 8, 8]", "widths in characters") ?? [];
    }

    /// <summary>Rows of the names in rising order; empty for none, null when left out or wrong.</summary>
    public static ImmutableArray<int>? HeaderRows(TableReader export, int lastRow)
    {
        if (Numbers(export, "headerRows", 0, lastRow, "[1]", "row numbers") is not { } rows)
        {
            return null;
        }

        if (rows is [] or [0])
        {
            return [];
        }

        if (rows.Length <= MostHeaderRows && rows[0] >= 1 && rows.Zip(rows.Skip(1)).All(pair => pair.First < pair.Second))
        {
            return rows;
        }

        export.Faults.Error(FaultCodes.Order, export.PlaceOf("headerRows"), "headerRows are not rising", $"up to {NumberKeys.Show(MostHeaderRows)} rows in their order, counted from 1", "write for example headerRows = [2, 3]");
        return null;
    }

    /// <summary>The sheet of a workbook, by name or number.</summary>
    public static FieldRef? Sheet(TableReader export) => export.Find("sheet")?.Value switch
    {
        null => null,
        TomlScalar { Value: long or double } => export.Whole("sheet", 1, LastSheet, "(sheet, counted from 1)") is { } position ? new FieldRef(null, position) : null,
        _ => export.Text("sheet") is { } name ? new FieldRef(name, null) : null,
    };

    /// <summary>The conditions of a column, in the order of their names.</summary>
    public static ImmutableArray<FieldCondition> Where(TableReader column, DialectSettings dialect)
    {
        if (column.Find("where") is not { } entry)
        {
            return [];
        }

        if (entry.Value is not TomlTable table)
        {
            column.WrongType("where", entry.Value, "a table of header and text", "write for example where = { sensor = \"T1\" }");
            return [];
        }

        if (dialect.HeaderRow == 0)
        {
            column.Faults.Error(FaultCodes.Column, entry.At, "where names columns, and headerRow = 0 says that the file has no names", "", "give the file a header row, or headerRow where it has one.");
        }

        List<FieldCondition> conditions = [];
        foreach (TomlEntry condition in table.Entries)
        {
            if (condition.Value is TomlScalar { Value: string text })
            {
                conditions.Add(new FieldCondition(condition.Key.Trim(), text.Trim()));
            }
            else
            {
                string written = condition.Value is TomlScalar scalar ? Excerpt.Quoted(scalar.Source) : "\"T1\"";
                column.WrongType($"where.{Excerpt.Of(condition.Key)}", condition.Value, "text", $"write it as the file does, in quotes: {written}");
            }
        }

        return [.. conditions.OrderBy(c => c.Field, StringComparer.Ordinal)];
    }

    private static ImmutableArray<int>? Numbers(TableReader export, string key, int low, int high, string example, string expected)
    {
        if (export.Find(key)?.Value is not { } value)
        {
            return null;
        }

        if (value is TomlArray { FromHeaders: false } list && list.Items.All(item => item is TomlScalar { Value: long number } && number >= low && number <= high))
        {
            return [.. list.Items.Select(item => (int)(long)((TomlScalar)item).Value!)];
        }

        export.WrongType(key, value, $"{expected} in brackets, {NumberKeys.Show(low)} to {NumberKeys.Show(high)}", $"write for example {key} = {example}");
        return null;
    }
}
