using System.Collections.Immutable;

namespace ClimateLens.Reports.Notebooks;

/// <summary>The parameters that a notebook gave a cell, checked against what the cell declares.</summary>
public sealed class CellValues
{
    private readonly ImmutableSortedDictionary<string, object> _values;

    internal CellValues(ImmutableSortedDictionary<string, object> values) => _values = values;

    /// <summary>None given.</summary>
    public static CellValues None { get; } = new(ImmutableSortedDictionary<string, object>.Empty);

    /// <summary>A text, or null when it is not given.</summary>
    public string? Text(string name) => _values.GetValueOrDefault(name) as string;

    /// <summary>A whole number, or what it is when not given.</summary>
    public int WholeNumber(string name, int usual) => _values.GetValueOrDefault(name) is long given ? (int)given : usual;

    /// <summary>A flag, or what it is when not given.</summary>
    public bool Flag(string name, bool usual) => _values.GetValueOrDefault(name) is bool given ? given : usual;
}
