using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>Two keys that point at a column of a file: by its header text, or by its position from 1.</summary>
internal static class FieldKeys
{
    private const int LastColumn = 10_000;

    /// <summary>The column; null when neither key is there or one is wrong.</summary>
    public static FieldRef? Read(TableReader table, string nameKey, string positionKey, DialectSettings dialect, bool required)
    {
        string? name = table.Text(nameKey);
        int? position = table.Whole(positionKey, 1, LastColumn, "(column, counted from 1)");
        if (table.Has(nameKey))
        {
            table.NotHere(positionKey, $"stands beside {nameKey}", "keep one of them.");
            if (dialect.HeaderRow == 0)
            {
                table.Faults.Error(FaultCodes.Column, table.PlaceOf(nameKey), $"{nameKey} names a column, and headerRow = 0 says that the file has no names", "", $"write {positionKey} = 1 for the first column, 2 for the second.");
            }

            return name is null ? null : new FieldRef(name.Trim(), null);
        }

        if (required && !table.Has(positionKey))
        {
            table.Missing(nameKey, "\"…\" with the header of the column, or position = 1");
        }

        return position is null ? null : new FieldRef(null, position);
    }
}
