using System.Globalization;
using ClimateLens.Logs;

namespace ClimateLens.Cli.Output;

/// <summary>What an import did, in one sentence.</summary>
internal static class ImportSummary
{
    /// <summary>Counts of files and rows.</summary>
    public static string Of(ImportReport report)
    {
        if (report.FilesRead == 0)
        {
            return report.FilesKnown == 0 ? "No file was read." : $"Nothing new: {Files(report.FilesKnown)} known already.";
        }

        string known = report.FilesKnown > 0 ? $", {Files(report.FilesKnown)} known already" : "";
        return string.Create(CultureInfo.InvariantCulture,
            $"Read {Files(report.FilesRead)}{known}: {report.Sheets.Sum(s => s.RowsRead)} rows = {report.Sheets.Sum(s => s.Accepted)} accepted + {report.Sheets.Sum(s => s.SetAside)} set aside + {report.Sheets.Sum(s => s.Duplicates)} duplicates + {report.Sheets.Sum(s => s.Blank)} blank.");
    }

    private static string Files(int count) => count == 1 ? "1 file" : string.Create(CultureInfo.InvariantCulture, $"{count} files");
}
