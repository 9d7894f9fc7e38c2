using System.Globalization;
using ClimateLens.Nursery.Problems;
using Tomlyn.Syntax;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Builds nested tables from the syntax tree and reports names that are used twice.</summary>
/// <param name="fileKeys">Names that the file's own tables may have.</param>
/// <param name="faults">Where faults go.</param>
internal sealed class TomlTree(IReadOnlyList<string> fileKeys, FaultList faults)
{
    /// <summary>Names of tables that there can be several of.</summary>
    private static readonly string[] Several = ["house", "crop", "spacing", "sensor", "export", "column"];

    private readonly TomlTable _root = new(Place.Top, TableOrigin.Header);

    /// <summary>The whole file as one table.</summary>
    public static TomlTable Build(DocumentSyntax document, IReadOnlyList<string> fileKeys, FaultList faults)
    {
        TomlTree tree = new(fileKeys, faults);
        tree.AddAll(tree._root, document.KeyValues);
        foreach (TableSyntaxBase table in document.Tables)
        {
            tree.AddAll(tree.Open(table), table.Items);
        }

        return tree._root;
    }

    private void AddAll(TomlTable table, SyntaxList<KeyValueSyntax> pairs)
    {
        foreach (KeyValueSyntax pair in pairs)
        {
            Add(table, pair);
        }
    }

    private void Add(TomlTable table, KeyValueSyntax pair)
    {
        if (pair.Key is null || pair.Value is null)
        {
            return;
        }

        List<(string Key, Place At)> path = TomlValues.PathOf(pair.Key);
        for (int i = 0; i < path.Count - 1; i++)
        {
            if (Step(table, path[i], TableOrigin.Inline) is not { } inner)
            {
                return;
            }

            table = inner;
        }

        (string key, Place at) = path[^1];
        if (table.Find(key) is { } before)
        {
            Twice(before, at);
            return;
        }

        table.Add(new TomlEntry(key, at, ValueOf(pair.Value)));
    }

    /// <summary>The table that a header opens; one outside the tree when the header repeats another.</summary>
    private TomlTable Open(TableSyntaxBase syntax)
    {
        Place at = TomlValues.PlaceOf(syntax);
        TomlTable lost = new(at, TableOrigin.Header);
        List<(string Key, Place At)> path = syntax.Name is null ? [] : TomlValues.PathOf(syntax.Name);
        if (path.Count == 0)
        {
            return lost;
        }

        TomlTable parent = _root;
        for (int i = 0; i < path.Count - 1; i++)
        {
            if (Step(parent, path[i], TableOrigin.Implied) is not { } inner)
            {
                return lost;
            }

            parent = inner;
        }

        string key = path[^1].Key;
        return (syntax is TableArraySyntax ? OpenItem(parent, key, at) : OpenTable(parent, key, at)) ?? lost;
    }

    private TomlTable? OpenItem(TomlTable parent, string key, Place at)
    {
        TomlEntry? before = parent.Find(key);
        if (before is { Value: not TomlArray { FromHeaders: true } })
        {
            Twice(before, at);
            return null;
        }

        if (before?.Value is not TomlArray list)
        {
            list = new TomlArray(at, fromHeaders: true);
            parent.Add(new TomlEntry(key, at, list));
        }

        TomlTable item = new(at, TableOrigin.Header);
        list.Items.Add(item);
        return item;
    }

    private TomlTable? OpenTable(TomlTable parent, string key, Place at)
    {
        if (parent.Find(key) is not { } before)
        {
            TomlTable table = new(at, TableOrigin.Header);
            parent.Add(new TomlEntry(key, at, table));
            return table;
        }

        if (before.Value is TomlTable { Origin: TableOrigin.Implied } implied)
        {
            implied.Origin = TableOrigin.Header;
            return implied;
        }

        Twice(before, at);
        return null;
    }

    /// <summary>One step down a dotted name: into a table, or into the last table of a list.</summary>
    private TomlTable? Step(TomlTable table, (string Key, Place At) part, TableOrigin origin)
    {
        if (table.Find(part.Key) is not { } entry)
        {
            if (table == _root && origin == TableOrigin.Implied && Misspelt(part.Key) is { } meant)
            {
                return meant;
            }

            TomlTable inner = new(part.At, origin);
            table.Add(new TomlEntry(part.Key, part.At, inner));
            return inner;
        }

        switch (entry.Value)
        {
            case TomlTable inner:
                return inner;
            case TomlArray { FromHeaders: true } list:
                return (TomlTable)list.Items[^1];
            default:
                Twice(entry, part.At);
                return null;
        }
    }

    /// <summary>[house.rules] below [[houses]] belongs to it: the slip is in the first name, which is reported later.</summary>
    private TomlTable? Misspelt(string key)
    {
        TomlEntry? above = _root.Entries.LastOrDefault(e => e.Value is TomlArray { FromHeaders: true } && !fileKeys.Contains(e.Key));
        bool near = above is not null && fileKeys.Contains(key) && NearestName.Of(above.Key, fileKeys) == key;
        return near ? (TomlTable)((TomlArray)above!.Value).Items[^1] : null;
    }

    private TomlNode ValueOf(ValueSyntax syntax)
    {
        Place at = TomlValues.PlaceOf(syntax);
        switch (syntax)
        {
            case InlineTableSyntax inline:
                TomlTable table = new(at, TableOrigin.Inline);
                foreach (InlineTableItemSyntax item in inline.Items)
                {
                    Add(table, item.KeyValue!);
                }

                return table;
            case ArraySyntax array:
                TomlArray list = new(at, fromHeaders: false);
                list.Items.AddRange(array.Items.Where(i => i.Value is not null).Select(i => ValueOf(i.Value!)));
                return list;
            default:
                return TomlValues.Scalar(syntax, at);
        }
    }

    private void Twice(TomlEntry before, Place at)
    {
        string line = before.At.Line.ToString(CultureInfo.InvariantCulture);
        string mend = Several.Contains(before.Key)
            ? $"give each of them its own header with double brackets; the one before is in line {line}."
            : $"keep this one or the one in line {line}.";
        faults.Error(FaultCodes.RepeatedKey, at, $"{Excerpt.Quoted(before.Key)} is given twice", "", mend);
    }
}
