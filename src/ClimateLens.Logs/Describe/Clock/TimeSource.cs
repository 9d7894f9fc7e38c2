using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>The column, or the columns, that may hold the time of a row; their texts are joined by one space.</summary>
/// <param name="columns">0-based columns in the order of the format.</param>
internal sealed class TimeSource(params int[] columns) : IEquatable<TimeSource>
{
    /// <summary>The columns.</summary>
    public ImmutableArray<int> Columns { get; } = [.. columns];

    /// <summary>The first column.</summary>
    public int First => Columns[0];

    /// <summary>The stamp of a row; empty when one of its cells is.</summary>
    public string Text(string[] cells)
    {
        if (Columns.Length == 1)
        {
            return First < cells.Length ? cells[First] : "";
        }

        string[] parts = new string[Columns.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            if (Columns[i] >= cells.Length || cells[Columns[i]].Length == 0)
            {
                return "";
            }

            parts[i] = cells[Columns[i]];
        }

        return string.Join(' ', parts);
    }

    /// <summary>Whether a column is part of it.</summary>
    public bool Has(int column) => Columns.Contains(column);

    /// <inheritdoc/>
    public bool Equals(TimeSource? other) => other is not null && Columns.SequenceEqual(other.Columns);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TimeSource);

    /// <inheritdoc/>
    public override int GetHashCode() => Columns.Aggregate(17, (hash, column) => (hash * 31) + column);
}
