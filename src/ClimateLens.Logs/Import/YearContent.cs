using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Import;

/// <summary>One UTC year of a source while files are imported into it.</summary>
/// <param name="rows">Its rows.</param>
internal sealed class YearContent(SortedRows rows)
{
    /// <summary>Its rows.</summary>
    public SortedRows Rows { get; set; } = rows;

    /// <summary>Whether they differ from what the store holds.</summary>
    public bool IsChanged { get; set; }

    /// <summary>Whether they lie in the staged part already.</summary>
    public bool IsWritten { get; set; }

    /// <summary>When it was last looked at, counted in years looked at.</summary>
    public int LastUse { get; set; }
}
