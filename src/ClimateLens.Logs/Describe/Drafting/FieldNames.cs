using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>Points at columns: by name where the name is one of its kind and can be written, else by position.</summary>
internal sealed class FieldNames
{
    private const int LongestName = 200;
    private readonly string[] _names;

    /// <summary>Looks at the header of a layout.</summary>
    public FieldNames(Layout layout)
    {
        string[] joined = [.. layout.Names.Zip(layout.Groups, (name, group) => $"{group} {name}".Trim())];
        UsesGroups = layout.NamesFit && layout.GroupsLine > 0 && Singles(joined) > Singles([.. layout.Names]) && Singles(joined) == joined.Length;
        _names = !layout.NamesFit ? [.. layout.Names.Select(_ => "")] : UsesGroups ? joined : [.. layout.Names];
        HasAny = layout.NamesFit && Enumerable.Range(0, _names.Length).Any(IsGood);
    }

    /// <summary>Whether the names of two rows make one.</summary>
    public bool UsesGroups { get; }

    /// <summary>Whether any column can be pointed at by name.</summary>
    public bool HasAny { get; }

    /// <summary>The key that points at a column.</summary>
    public DraftKey Key(int column, string nameKey = "field", string positionKey = "position")
        => IsGood(column) ? DraftKey.Of(nameKey, TomlText.Quote(_names[column])) : DraftKey.Of(positionKey, $"{column + 1}", null, Why(column));

    /// <summary>The keys that point at the column of a time, at date and time of day apart, or at more columns as a list.</summary>
    public IEnumerable<DraftKey> Keys(IReadOnlyList<int> columns)
    {
        if (columns.Count > 2)
        {
            return [List(columns, "field", "position")];
        }

        return columns.Count == 1 ? [Key(columns[0])] : [Key(columns[0]), Key(columns[1], "timeOfDayField", "timeOfDayPosition")];
    }

    /// <summary>The key that points at one column, or at several as a list: all by name, or all by position.</summary>
    public DraftKey List(IReadOnlyList<int> columns, string nameKey, string positionKey)
        => columns.Count == 1 ? Key(columns[0], nameKey, positionKey)
        : columns.All(IsGood) ? DraftKey.Of(nameKey, TomlText.List(columns.Select(c => _names[c])))
        : DraftKey.Of(positionKey, $"[{string.Join(", ", columns.Select(c => c + 1))}]");

    /// <summary>The name of a column, or null when it can't be pointed at by name.</summary>
    public string? Name(int column) => IsGood(column) ? _names[column] : null;

    private bool IsGood(int column)
    {
        string name = _names[column];
        return name.Length is > 0 and <= LongestName && !Excerpt.HasHidden(name) && _names.Count(n => string.Equals(n, name, StringComparison.OrdinalIgnoreCase)) == 1;
    }

    private string Why(int column) => _names[column].Length == 0 ? "no name to point at" : _names[column].Length > LongestName ? "the name is too long" : "the name stands over several columns";

    private static int Singles(string[] names) => names.GroupBy(n => n, StringComparer.OrdinalIgnoreCase).Count(g => g.Count() == 1 && g.Key.Length > 0);
}
