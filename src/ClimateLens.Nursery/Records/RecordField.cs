using ClimateLens.Nursery.Channels;

namespace ClimateLens.Nursery.Records;

/// <summary>How the text of a record's field is read and kept.</summary>
public enum RecordFieldType
{
    /// <summary>Text, kept as written.</summary>
    Text,

    /// <summary>A number; with a <see cref="RecordField.Quantity"/> it has a unit and is kept in SI.</summary>
    Number,

    /// <summary>A time in the pattern and zone of the export.</summary>
    Time,

    /// <summary>A watering method: a name of <see cref="WateringMethods"/>.</summary>
    Method,

    /// <summary>A moisture level from 1 (dry) to 5 (saturated).</summary>
    Level,
}

/// <summary>A field that a record may have beside its time.</summary>
/// <param name="Name">Name in the nursery file and in <see cref="RecordRow.Fields"/>, for example <c>litres</c>.</param>
/// <param name="Type">How it is read.</param>
/// <param name="Quantity">What a number measures; null for a plain number and for every other type.</param>
public sealed record RecordField(string Name, RecordFieldType Type, Quantity? Quantity = null)
{
    /// <summary>The unit of a column that names none; null where a measured number must name its unit.</summary>
    public string? DefaultUnit { get; init; }
}
