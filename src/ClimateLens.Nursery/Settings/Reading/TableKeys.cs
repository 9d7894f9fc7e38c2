namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Keys that hold tables.</summary>
internal static class TableKeys
{
    /// <summary>The one table of a key, or null.</summary>
    public static TableReader? Table(this TableReader reader, string key, string name, IReadOnlyList<string> keys)
    {
        switch (reader.Find(key)?.Value)
        {
            case null:
                return null;
            case TomlTable table:
                return new TableReader(table, name, reader.Faults, keys);
            case TomlArray { FromHeaders: true } list:
                reader.WrongType(key, list, "one table", $"write {name} once, with single brackets.");
                return new TableReader((TomlTable)list.Items[0], name, reader.Faults, keys);
            case { } other:
                reader.WrongType(key, other, "a table", $"write {name} on a line of its own and its keys below it.");
                return null;
        }
    }

    /// <summary>The tables of a key in file order. A single table counts as one, and is reported.</summary>
    public static IEnumerable<TableReader> Tables(this TableReader reader, string key, string name, IReadOnlyList<string> keys)
    {
        switch (reader.Find(key)?.Value)
        {
            case null:
                yield break;
            case TomlTable { Origin: TableOrigin.Implied } rest when reader.Faults.PartUnread:
                yield return new TableReader(rest, name, reader.Faults, keys); // its header is among what could not be read
                break;
            case TomlTable table:
                reader.WrongType(key, table, "a list of tables", $"write {name} with double brackets, once for each.");
                yield return new TableReader(table, name, reader.Faults, keys);
                break;
            case TomlArray list:
                foreach (TomlNode item in list.Items)
                {
                    if (item is TomlTable table)
                    {
                        yield return new TableReader(table, name, reader.Faults, keys);
                    }
                    else
                    {
                        reader.WrongType(key, item, "a table in each place", $"write {name} on a line of its own and its keys below it.");
                    }
                }

                break;
            case { } other:
                reader.WrongType(key, other, "a list of tables", $"write {name} on a line of its own and its keys below it.");
                break;
        }
    }
}
