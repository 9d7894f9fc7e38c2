using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs;

/// <summary>Reads a nursery file from disk.</summary>
public static class NurseryFileReader
{
    /// <summary>Reads and checks a nursery file, with the paths of its exports that are no patterns.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="FileNotFoundException">There is no such file.</exception>
    /// <exception cref="NurseryFileException">It has faults; all of them are listed.</exception>
    public static NurserySettings Read(string path)
    {
        if (!File.Exists(path))
        {
            throw new FileNotFoundException($"There is no nursery file {path}.", path);
        }

        byte[] bytes = File.ReadAllBytes(path);
        NurserySettings nursery = NurseryFile.Parse(path, bytes);
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        string[] lines = System.Text.Encoding.UTF8.GetString(bytes).Split('\n');
        Problem[] missing = [.. nursery.Exports.SelectMany(export => Missing(export, folder, nursery.FileName, lines))];
        return missing.Length == 0 ? nursery : throw new NurseryFileException(missing);
    }

    private static IEnumerable<Problem> Missing(ExportSettings export, string folder, string fileName, string[] lines)
    {
        foreach (string file in export.Files.Where(file => !ExportFiles.IsPattern(file) && !Path.Exists(Path.Combine(folder, file))))
        {
            (int? line, int? column) = Find(file, export.Line, lines);
            yield return ProblemCodes.NotFound.In(fileName, line, column, $"no file {SafeText.Quote(file)}", "a file that exists");
        }
    }

    /// <summary>Where a path stands in its export's table, 1-based; the table itself when it is written otherwise (escapes).</summary>
    private static (int? Line, int? Column) Find(string file, int tableLine, string[] lines)
    {
        for (int i = Math.Max(0, tableLine - 1); i < lines.Length; i++)
        {
            int at = lines[i].IndexOf($"\"{file}\"", StringComparison.Ordinal);
            at = at < 0 ? lines[i].IndexOf($"'{file}'", StringComparison.Ordinal) : at;
            if (at >= 0)
            {
                return (i + 1, at + 1);
            }
        }

        return (tableLine, null);
    }
}
