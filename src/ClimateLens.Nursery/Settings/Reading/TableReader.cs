using ClimateLens.Nursery.Problems;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>
/// A cursor over one table. It knows every key that the table may have, reports the others at once, and lets a
/// misspelt key stand for the one that was meant, so that one slip makes one problem.
/// </summary>
internal sealed class TableReader
{
    private readonly TomlTable _table;
    private readonly Dictionary<string, TomlEntry> _meant = new(StringComparer.Ordinal);

    /// <summary>A cursor; reports unknown keys.</summary>
    /// <param name="table">The table.</param>
    /// <param name="name">How people write it, for example <c>[[house]]</c>.</param>
    /// <param name="faults">Where faults go.</param>
    /// <param name="keys">Every key that it may have.</param>
    public TableReader(TomlTable table, string name, FaultList faults, IReadOnlyList<string> keys)
    {
        _table = table;
        Name = name;
        Faults = faults;
        foreach (TomlEntry entry in table.Entries.Where(e => !keys.Contains(e.Key)))
        {
            ReportUnknown(entry, keys);
        }
    }

    public string Name { get; }

    public FaultList Faults { get; }

    public Place At => _table.At;

    /// <summary>The entry of a key, or of the misspelt key that seems to mean it; null when there is none.</summary>
    public TomlEntry? Find(string key) => _table.Find(key) ?? _meant.GetValueOrDefault(key);

    public bool Has(string key) => Find(key) is not null;

    /// <summary>Where a key's value stands, or the table where the key is left out.</summary>
    public Place PlaceOf(string key) => Find(key)?.Value.At ?? At;

    /// <summary>Reports a key that has to be there.</summary>
    public void Missing(string key, string example)
        => Faults.Missing(FaultCodes.MissingKey, At, $"{Name} has no \"{key}\"", "", $"add {key} = {example}");

    /// <summary>Reports a value of another type than the key takes.</summary>
    public void WrongType(string key, TomlNode value, string expected, string mend)
        => Faults.Error(FaultCodes.WrongType, value.At, $"{key} is {value.Describe()}", expected, mend);

    /// <summary>Reports keys that mean nothing where they stand.</summary>
    public void NotHere(string key, string why, string mend)
    {
        if (Find(key) is { } entry)
        {
            Faults.Error(FaultCodes.NotHere, entry.At, $"{Excerpt.Quoted(entry.Key)} {why}", "", mend);
        }
    }

    private void ReportUnknown(TomlEntry entry, IReadOnlyList<string> keys)
    {
        string? near = NearestName.Of(entry.Key, keys.Where(k => _table.Find(k) is null && !_meant.ContainsKey(k)))
            ?? NearestName.Of(entry.Key, keys);
        if (near is null)
        {
            string all = string.Join(", ", keys);
            Faults.Error(FaultCodes.UnknownKey, entry.At, $"unknown key {Excerpt.Quoted(entry.Key)} in {Name}", $"one of: {all}", "take the key out, or put # before it.");
            return;
        }

        Faults.Error(FaultCodes.UnknownKey, entry.At, $"unknown key {Excerpt.Quoted(entry.Key)} in {Name}", "", $"did you mean \"{near}\"?");
        if (_table.Find(near) is null)
        {
            _meant.TryAdd(near, entry);
        }
    }
}
