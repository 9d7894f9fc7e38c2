using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Cli.Commands;

/// <summary>Files that lie in a nursery's folder of exports and that no [[export]] reads: for a newcomer, the next step.</summary>
internal static class UnreadExports
{
    private const string Folder = "exports";
    private const int MostTold = 5;

    private static readonly string[] Endings = [".csv", ".txt", ".tsv", ".dat", ".xlsx", ".xls", ".zip", ".gz"];

    /// <summary>A note for each file, or one for the many.</summary>
    /// <param name="nurseryPath">The nursery file.</param>
    /// <param name="read">Files that were read or found wanting, as messages name them.</param>
    public static IEnumerable<Problem> Of(string nurseryPath, IEnumerable<string> read)
    {
        string[] unread = [.. Files(nurseryPath).Except(read.Select(file => file.Split('!')[0]), StringComparer.Ordinal)];
        foreach (string file in unread.Take(MostTold))
        {
            yield return Note(file, "no [[export]] reads it", $"Draft one: {Command(nurseryPath, file)}");
        }

        if (unread.Length > MostTold)
        {
            yield return Note(Folder, $"no [[export]] reads {unread.Length - MostTold} more files", "A * in files takes several, as in files = [\"exports/house-1-*.csv\"].");
        }
    }

    /// <summary>The faults of a nursery file, the one of the missing export with the command that drafts it.</summary>
    public static ImmutableArray<Problem> WithNextStep(string nurseryPath, IEnumerable<Problem> faults)
    {
        string step = Files(nurseryPath).FirstOrDefault() is string first
            ? $"Draft one: {Command(nurseryPath, first)}"
            : $"Put a first export into {Folder}/, then draft its table: {Command(nurseryPath, $"{Folder}/FILE.csv")}";
        return [.. faults.Select(fault => fault.Code == "nursery.missingKey" && fault.Found.Contains("[[export]]", StringComparison.Ordinal) ? fault with { Mend = step } : fault)];
    }

    private static string Command(string nurseryPath, string file)
        => $"climatelens describe {Path.Combine(Path.GetDirectoryName(nurseryPath) ?? "", file)} --house ID --add {nurseryPath}";

    private static Problem Note(string file, string found, string mend) => new("check.unread", Severity.Note, file, null, null, found, "", mend);

    private static IEnumerable<string> Files(string nurseryPath)
    {
        string folder = Path.Combine(Session.FolderOf(nurseryPath), Folder);
        return Directory.Exists(folder)
            ? Directory.EnumerateFiles(folder).Select(path => Path.GetFileName(path)).Where(name => name[0] != '.' && Endings.Contains(Path.GetExtension(name).ToLowerInvariant())).Order(StringComparer.Ordinal).Select(name => $"{Folder}/{name}")
            : [];
    }
}
