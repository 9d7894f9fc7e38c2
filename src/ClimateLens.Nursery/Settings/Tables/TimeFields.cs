using System.Collections.Immutable;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>Keys that point at one column or at several whose texts make up a time: <c>field = ["Year", "Day", "HHMM"]</c>.</summary>
internal static class TimeFields
{
    // Year, month, day, hour, minute, second.
    private const int MostColumns = 6;
    private const int LastColumn = 10_000;

    /// <summary>The columns in their order; none when neither key is there or one is wrong.</summary>
    public static ImmutableArray<FieldRef> Read(TableReader time, string nameKey, string positionKey, DialectSettings dialect, bool required)
    {
        if (time.Find(nameKey)?.Value is TomlArray { FromHeaders: false } names)
        {
            time.NotHere(positionKey, $"stands beside {nameKey}", "keep one of them.");
            if (dialect.HeaderRow == 0)
            {
                time.Faults.Error(FaultCodes.Column, time.PlaceOf(nameKey), $"{nameKey} names columns, and headerRow = 0 says that the file has no names", "", $"write {positionKey} = [1, 2] for the first two columns.");
            }

            return Several(time, nameKey, names, [.. time.Texts(nameKey, "[\"Date\", \"Time\"]").Select(name => new FieldRef(name.Trim(), null))]);
        }

        if (time.Find(positionKey)?.Value is TomlArray { FromHeaders: false } places && !time.Has(nameKey))
        {
            return Several(time, positionKey, places, [.. places.Items.Select(item => Position(time, positionKey, item)).OfType<FieldRef>()]);
        }

        return FieldKeys.Read(time, nameKey, positionKey, dialect, required) is { } one ? [one] : [];
    }

    /// <summary>Reports either key where it means nothing.</summary>
    public static void NotHere(TableReader time, string nameKey, string positionKey, string why, string mend)
        => time.NotHere(time.Has(nameKey) ? nameKey : positionKey, why, mend);

    private static ImmutableArray<FieldRef> Several(TableReader time, string key, TomlArray list, ImmutableArray<FieldRef> fields)
    {
        if (list.Items.Count is 0 or > MostColumns)
        {
            time.Faults.Error(FaultCodes.Column, list.At, $"{key} has {NumberKeys.Show(list.Items.Count)} columns", $"1 to {NumberKeys.Show(MostColumns)}", "list the columns of the date and the time, in the order of format.");
        }

        if (fields.GroupBy(f => f).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            time.Faults.Error(FaultCodes.Column, list.At, $"{key} has {twice.Key} twice", "each column once", "take one out.");
        }

        return fields;
    }

    private static FieldRef? Position(TableReader time, string key, TomlNode item)
    {
        if (item is TomlScalar { Value: long place and >= 1 and <= LastColumn })
        {
            return new FieldRef(null, (int)place);
        }

        time.WrongType(key, item, "the number of a column, counted from 1", $"write for example {key} = [1, 2]");
        return null;
    }
}
