using System.Globalization;
using ClimateLens.Nursery.Problems;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>A value of the file with its place.</summary>
internal abstract class TomlNode(Place at)
{
    public Place At { get; } = at;

    /// <summary>What it is, for messages: "the text "abc"", "the number 5".</summary>
    public abstract string Describe();
}

/// <summary>Text, a number, true or false, a date. <see cref="Value"/> is a string, long, double, bool, LocalDate, LocalDateTime, or null for another time.</summary>
internal sealed class TomlScalar(Place at, object? value, string source) : TomlNode(at)
{
    public object? Value { get; } = value;

    /// <summary>As written.</summary>
    public string Source { get; } = source.Trim();

    public override string Describe() => Value switch
    {
        string text => $"the text {Excerpt.Quoted(text)}",
        long or double => $"the number {Excerpt.Of(Source)}",
        bool flag => flag ? "true" : "false",
        LocalDate date => $"the date {LocalDatePattern.Iso.Format(date)}",
        _ => $"the time {Excerpt.Of(Source)}",
    };
}

/// <summary>A list; <see cref="FromHeaders"/> when it was written as [[name]] tables.</summary>
internal sealed class TomlArray(Place at, bool fromHeaders) : TomlNode(at)
{
    public List<TomlNode> Items { get; } = [];

    public bool FromHeaders { get; } = fromHeaders;

    public override string Describe() => FromHeaders
        ? "a list of tables"
        : $"a list of {Items.Count.ToString(CultureInfo.InvariantCulture)}";
}

/// <summary>A key of a table, where it stands, and what it holds.</summary>
internal sealed record TomlEntry(string Key, Place At, TomlNode Value);

/// <summary>How a table came to be; decides what may be added to it.</summary>
internal enum TableOrigin
{
    /// <summary>Named only as part of a longer name, so far.</summary>
    Implied,

    /// <summary>By [name] or [[name]].</summary>
    Header,

    /// <summary>By { … } or by a dotted key; complete where it stands.</summary>
    Inline,
}

/// <summary>A table with its keys in file order.</summary>
internal sealed class TomlTable(Place at, TableOrigin origin) : TomlNode(at)
{
    private readonly Dictionary<string, TomlEntry> _entries = new(StringComparer.Ordinal);

    public TableOrigin Origin { get; set; } = origin;

    public IEnumerable<TomlEntry> Entries => _entries.Values;

    public TomlEntry? Find(string key) => _entries.GetValueOrDefault(key);

    public void Add(TomlEntry entry) => _entries.Add(entry.Key, entry);

    public override string Describe() => "a table";
}
