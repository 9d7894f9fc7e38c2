using System.Text.Json;
using ClimateLens.Analysis.Comparison;

namespace ClimateLens.Reports;

/// <summary>Writes comparison.json, the image of a <see cref="ComparisonReport"/>, in the manner of review.json.</summary>
public static class CompareJson
{
    /// <summary>Writes it.</summary>
    /// <param name="report">The comparison.</param>
    public static byte[] Write(ComparisonReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return [.. JsonSerializer.SerializeToUtf8Bytes(report, ReviewJson.Context.ComparisonReport), (byte)'\n'];
    }
}
