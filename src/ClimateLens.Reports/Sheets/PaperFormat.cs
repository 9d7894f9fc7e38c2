namespace ClimateLens.Reports.Sheets;

/// <summary>Paper to print on.</summary>
public enum PaperFormat
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>8.5 by 11 inches.</summary>
    Letter,
}
