using System.Collections.Immutable;
using ClimateLens.Logs.Import;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs;

/// <summary>Reads all exports of a nursery and changes nothing: no store is needed, made or touched.</summary>
public static class ExportChecker
{
    /// <summary>Reads everything and reports every problem.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Folder of the nursery file.</param>
    public static ImportReport Check(NurserySettings nursery, string nurseryFolder)
    {
        var problems = new ProblemList();
        var finder = new ExportFiles(nurseryFolder, nursery);
        var sheets = ImmutableArray.CreateBuilder<ImportSheet>();
        int known = 0;
        using var spill = new SpillFolder(StoreDisk.Real, Path.Combine(Path.GetTempPath(), "climatelens-" + Path.GetRandomFileName()));
        foreach (ExportSettings export in nursery.Exports)
        {
            var workshop = new Workshop(null, spill, MemoryLimits.Usual, "");
            SourceContent content = SourceUpdate.ContentOf(export, nursery, [], null, workshop, storeStands: false);
            var import = new SourceImport(nursery, export, [], content, null, problems, null);
            import.Run(Candidates.Of(finder.Of(export, nursery.FileName, problems), [], export.Dialect, problems));
            sheets.AddRange(import.Read.Select(file => ImportSheets.Of(file, SourceKey.Of(export))));
            known += import.Known;
        }

        return new ImportReport(sheets.ToImmutable(), problems.ToImmutable(), sheets.Count, known);
    }
}
