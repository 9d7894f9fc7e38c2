using System.Collections.Immutable;

namespace ClimateLens.Nursery.Time;

/// <summary>
/// One house's aligned readings: a time axis and immutable columns of equal length, each with its quality flags.
/// A stage only ever adds columns; it never changes one.
/// </summary>
public sealed class Frame
{
    private readonly ImmutableDictionary<ColumnKey, (ImmutableArray<double> Values, ImmutableArray<QualityFlag> Flags)> _columns;

    /// <summary>A frame without columns.</summary>
    public Frame(TimeAxis axis)
        : this(axis, ImmutableDictionary<ColumnKey, (ImmutableArray<double>, ImmutableArray<QualityFlag>)>.Empty)
    {
    }

    private Frame(TimeAxis axis, ImmutableDictionary<ColumnKey, (ImmutableArray<double>, ImmutableArray<QualityFlag>)> columns)
    {
        Axis = axis;
        _columns = columns;
    }

    /// <summary>The time axis shared by all columns.</summary>
    public TimeAxis Axis { get; }

    /// <summary>All columns, in ordinal order of their names.</summary>
    public IEnumerable<ColumnKey> Columns => _columns.Keys.OrderBy(k => k.ToString(), StringComparer.Ordinal);

    /// <summary>Whether the column exists.</summary>
    public bool Has(ColumnKey key) => _columns.ContainsKey(key);

    /// <summary>All columns of a channel, in ordinal order of the sensor.</summary>
    public IEnumerable<ColumnKey> Of(string channel) => Columns.Where(k => k.Channel == channel);

    /// <summary>The values, NaN where missing. Throws <see cref="KeyNotFoundException"/> for an unknown column.</summary>
    public ImmutableArray<double> Values(ColumnKey key) => _columns[key].Values;

    /// <summary>The flags, one a value.</summary>
    public ImmutableArray<QualityFlag> Flags(ColumnKey key) => _columns[key].Flags;

    /// <summary>A frame that has one more column. Throws when the column exists or has another length than the axis.</summary>
    public Frame With(ColumnKey key, ImmutableArray<double> values, ImmutableArray<QualityFlag> flags)
    {
        if (values.Length != Axis.Count || flags.Length != Axis.Count)
        {
            throw new ArgumentException($"Column {key} has {values.Length} values and {flags.Length} flags; the axis has {Axis.Count} steps.", nameof(values));
        }

        return new Frame(Axis, _columns.Add(key, (values, flags)));
    }

    /// <summary>A frame in which an existing column carries other flags; the values stay.</summary>
    public Frame WithFlags(ColumnKey key, ImmutableArray<QualityFlag> flags)
    {
        ImmutableArray<double> values = _columns[key].Values;
        if (flags.Length != Axis.Count)
        {
            throw new ArgumentException($"Column {key} got {flags.Length} flags; the axis has {Axis.Count} steps.", nameof(flags));
        }

        return new Frame(Axis, _columns.SetItem(key, (values, flags)));
    }
}
