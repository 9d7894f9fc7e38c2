namespace ClimateLens.Nursery.Time;

/// <summary>Names one series of a house: the channel and, where a house has several of a kind, the sensor.</summary>
/// <param name="Channel">Name of a channel of <see cref="Channels.ChannelCatalogue"/>, for example <c>relativeHumidity</c>.</param>
/// <param name="Sensor">Sensor or line name from the nursery file; empty where the source has one of the kind.</param>
public readonly record struct ColumnKey(string Channel, string Sensor = "")
{
    /// <summary>The column's name in Parquet and CSV: <c>channel</c> or <c>channel@sensor</c>.</summary>
    public override string ToString() => Sensor.Length == 0 ? Channel : $"{Channel}@{Sensor}";

    /// <summary>Reads what <see cref="ToString"/> writes.</summary>
    public static ColumnKey Parse(string text)
    {
        int at = text.IndexOf('@', StringComparison.Ordinal);
        return at < 0 ? new ColumnKey(text) : new ColumnKey(text[..at], text[(at + 1)..]);
    }
}
