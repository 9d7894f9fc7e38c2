using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>The files behind a review as CSV, a row each; their channels and gaps stand in review.json.</summary>
internal static class FilesTable
{
    public static byte[] Of(ImmutableArray<ImportedFile> files)
    {
        CsvTable table = new(
            "file", "house", "source", "rowsRead", "accepted", "setAside", "duplicates", "blank", "cellsNotRead", "conflicts", "first", "last",
            "stepSeconds", "stepShare", "gapCount", "gapHours", "reasons", "clock");
        foreach (ImportedFile f in files)
        {
            table.Text(f.File).Text(f.House).Text(f.Source).Number(f.RowsRead).Number(f.Accepted).Number(f.SetAside).Number(f.Duplicates).Number(f.Blank)
                .Number(f.CellsNotRead).Number(f.Conflicts).Time(f.First).Time(f.Last)
                .Number((double?)f.Found?.StepSeconds).Number(f.Found?.StepShare).Number((double?)f.Found?.GapCount).Number(f.Found?.GapHours)
                .Text(string.Join("; ", (f.Found?.Reasons ?? []).Select(r => $"{r.Code} {r.Count}")))
                .Text(f.Found?.Clock?.Sentence).EndRow();
        }

        return table.ToBytes();
    }
}
