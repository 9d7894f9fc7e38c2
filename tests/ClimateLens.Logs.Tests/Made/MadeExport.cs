namespace ClimateLens.Logs.Tests.Made;

/// <summary>A column that was written, and what its values are.</summary>
/// <param name="Header">Header.</param>
/// <param name="Channel">Channel; "other" where it is none.</param>
/// <param name="Unit">Unit of the file, as a nursery file may name it.</param>
/// <param name="Values">Value by row in the unit of the store; NaN where none was written.</param>
internal sealed record MadeColumn(string Header, string Channel, string Unit, double[] Values)
{
    /// <summary>The channel in the store, with the sensor where there are several of it.</summary>
    public string Sensor => Channel is "lee" or "wind" ? Channel : "";

    /// <summary>The channel as the catalogue names it.</summary>
    public string Known => Channel is "lee" or "wind" ? "ventPosition" : Channel;

    /// <summary>Whether it is a channel.</summary>
    public bool IsChannel => Channel != "other";

    /// <summary>Its name in the store.</summary>
    public string Key => new Nursery.Time.ColumnKey(Known, Sensor).ToString();
}

/// <summary>A row that was written.</summary>
/// <param name="Micros">Its instant. [µs]</param>
/// <param name="Lines">1-based lines on which it, or what is left of it, stands; none where it is gone.</param>
/// <param name="IsTorn">Whether it was spoilt.</param>
internal sealed record MadeRow(long Micros, int[] Lines, bool IsTorn);

/// <summary>An invented export and what stands in it.</summary>
/// <param name="FileName">Name of the file.</param>
/// <param name="Bytes">Its bytes.</param>
/// <param name="Story">How it was made, for messages.</param>
/// <param name="Rows">Its rows.</param>
/// <param name="Columns">Its columns of values, in the order of the file.</param>
/// <param name="FirstColumn">0-based place of the first of them.</param>
/// <param name="Style">How it is written.</param>
internal sealed record MadeExport(string FileName, byte[] Bytes, string Story, MadeRow[] Rows, IReadOnlyList<MadeColumn> Columns, int FirstColumn, MakerStyle Style)
{
    /// <summary>The table of the nursery file that reads it, written by who made it.</summary>
    public required string Toml { get; init; }
}
