using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe;

/// <summary>A key of the draft with its value and why.</summary>
/// <param name="Key">Key of the nursery file.</param>
/// <param name="Values">Its value as TOML; several where the user has to choose.</param>
/// <param name="Sureness">How sure; null where nothing was guessed.</param>
/// <param name="Evidence">Why, in a few words; may be empty.</param>
public sealed record DraftKey(string Key, ImmutableArray<string> Values, Sureness? Sureness, string Evidence)
{
    /// <summary>What stands in place of the value until the user has chosen, where leaving the key out would read the file wrong; else null.</summary>
    public string? Placeholder { get; init; }

    /// <summary>Whether the user has to choose.</summary>
    public bool IsAsked => Sureness == Describe.Sureness.Unsure;

    /// <summary>A key with one value.</summary>
    public static DraftKey Of(string key, string value, Sureness? sureness = null, string evidence = "") => new(key, [value], sureness, evidence);
}

/// <summary>A column of the draft.</summary>
/// <param name="Position">Its place in the file, from 1.</param>
/// <param name="Header">Its header, or what its rows are called.</param>
/// <param name="Keys">Its keys.</param>
/// <param name="Sureness">How sure all of it is; when unsure the whole column stands as a question.</param>
public sealed record DraftColumn(int Position, string Header, ImmutableArray<DraftKey> Keys, Sureness Sureness);

/// <summary>A column that the draft leaves out.</summary>
/// <param name="Position">Its place in the file, from 1.</param>
/// <param name="Header">Its header.</param>
/// <param name="Reason">Why.</param>
public sealed record UnusedColumn(int Position, string Header, string Reason);

/// <summary>One [[export]] table as drafted.</summary>
/// <param name="Name">Its name.</param>
/// <param name="House">Its house, or null for one that serves the whole nursery.</param>
/// <param name="Files">The files that it was drafted from, as the user named them.</param>
/// <param name="Summary">What was looked at, in a sentence.</param>
/// <param name="Keys">Keys of the export.</param>
/// <param name="Time">Keys of its time.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Unused">Columns that it leaves out.</param>
/// <param name="Notes">What else is worth knowing.</param>
public sealed record DraftExport(
    string Name,
    string? House,
    ImmutableArray<string> Files,
    string Summary,
    ImmutableArray<DraftKey> Keys,
    ImmutableArray<DraftKey> Time,
    ImmutableArray<DraftColumn> Columns,
    ImmutableArray<UnusedColumn> Unused,
    ImmutableArray<string> Notes)
{
    /// <summary>Whether a question is open without which nothing can be read.</summary>
    public bool IsBlocked => Keys.Any(k => k.IsAsked) || Time.Any(k => k.IsAsked);

    /// <summary>Whether it is of records and not of readings.</summary>
    public bool IsOfRecords => Keys.Any(k => k.Key == "kind");

    /// <summary>Number of open questions.</summary>
    public int Questions => Keys.Count(k => k.IsAsked) + Time.Count(k => k.IsAsked) + Columns.Count(c => c.Sureness == Sureness.Unsure);
}
