using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Health;

/// <summary>Exports of the nursery file for which there is no file.</summary>
internal static class ExportMatch
{
    public static IEnumerable<CheckupLine> Of(NurserySettings nursery, string nurseryFolder)
    {
        ExportFiles finder = new(nurseryFolder, nursery);
        foreach (ExportSettings export in nursery.Exports)
        {
            ProblemList problems = new();
            ExportFile[] files = [.. finder.Of(export, nursery.FileName, problems)];
            string[] missing = [.. files.Where(f => !File.Exists(f.Path)).Select(f => f.Name)];
            string[] empty = [.. problems.ToImmutable().Where(p => p.Code == ProblemCodes.NoFiles.Code || p.Code == ProblemCodes.FolderClosed.Code).Select(p => p.Found)];
            foreach (string name in missing)
            {
                yield return Look($"no file {SafeText.Quote(name)} of export {SafeText.Quote(export.Name)}", export);
            }

            foreach (string found in empty)
            {
                yield return Look(found, export);
            }

            if (missing.Length + empty.Length == 0)
            {
                yield return CheckupLine.Fine("export.files", $"Export \"{export.Name}\" has {Checkup.Count(files.Length, "file")}.");
            }
        }
    }

    private static CheckupLine Look(string found, ExportSettings export) => CheckupLine.Look("export.files",
        FormattableString.Invariant($"Of the exports: {found} (line {export.Line} of the nursery file)."), "Put the file there or correct files in the nursery file; paths are read from the folder of the nursery file.");
}
