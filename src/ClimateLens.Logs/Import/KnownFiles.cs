using System.Globalization;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Import;

/// <summary>What there is to say of files that were read before: a faulty one is told of as long as it stays as it is.</summary>
internal static class KnownFiles
{
    /// <summary>Reports a file that a run finds unchanged.</summary>
    public static void Report(ExportFile file, LedgerFile entry, ProblemList problems)
    {
        if (entry.File != file.Name)
        {
            problems.Add(ProblemCodes.SameFile.In(file.Name, null, null, $"the same bytes as {SafeText.Quote(entry.File)}", ""));
        }
        else if (entry.RowsRead == 0 && entry.Size != LedgerFile.UnknownSize)
        {
            problems.Add(WithoutRows(file, entry.Size == 0));
        }
        else if (entry.Accepted == 0 && entry.Duplicates == 0 && entry.SetAside > 0)
        {
            problems.Add(ProblemCodes.NothingTaken.In(file.Name, null, null, string.Create(CultureInfo.InvariantCulture, $"{entry.SetAside} rows, all of them set aside"), "rows that can be read"));
        }
    }

    /// <summary>A file with no data row.</summary>
    public static Problem WithoutRows(ExportFile file, bool isEmpty)
        => (isEmpty ? ProblemCodes.Empty : ProblemCodes.HeaderOnly).In(file.Name, null, null, isEmpty ? "an empty file" : "no data rows", "data");
}
