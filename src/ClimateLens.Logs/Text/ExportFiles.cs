using System.IO.Enumeration;
using ClimateLens.Logs.Packed;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>Finds the files of an export.</summary>
/// <param name="nurseryFolder">Folder of the nursery file.</param>
/// <param name="nursery">The nursery; a pattern never takes files of its store or its site for exports.</param>
internal sealed class ExportFiles(string nurseryFolder, NurserySettings nursery)
{
    private static readonly EnumerationOptions Options = new() { AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false };

    private readonly SortedSet<string> _closed = new(StringComparer.Ordinal); // folders that may not be read
    private readonly string _root = Path.GetFullPath(nurseryFolder);
    private readonly string[] _own = [.. ((string[])[nursery.Store, nursery.Site]).Select(folder => Path.GetFullPath(Path.Combine(nurseryFolder, folder)) + Path.DirectorySeparatorChar)];

    /// <summary>Whether a path under files is a pattern.</summary>
    public static bool IsPattern(string path) => path.AsSpan().IndexOfAny('*', '?') >= 0;

    /// <summary>The files of an export, each once: in the order of its patterns, within one in ordinal order of the path.</summary>
    public List<ExportFile> Of(ExportSettings export, string nurseryFile, ProblemList problems)
    {
        var files = new List<ExportFile>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var zip = new ZipEntries(export.Dialect, problems);
        foreach (string entry in export.Files)
        {
            _closed.Clear();
            List<string> found = IsPattern(entry) ? Matching(entry) : Named(entry);
            foreach (string folder in _closed)
            {
                problems.Add(ProblemCodes.FolderClosed.In(nurseryFile, export.Line, null, $"the folder {SafeText.Quote(NameOf(folder))} of export {SafeText.Quote(export.Name)} cannot be read", "a folder that may be read"));
            }

            if (found.Count == 0 && _closed.Count == 0)
            {
                problems.Add(ProblemCodes.NoFiles.In(nurseryFile, export.Line, null, $"no file for {SafeText.Quote(entry)} of export {SafeText.Quote(export.Name)}", "at least one file"));
            }

            files.AddRange(found.Where(seen.Add).Select(path => new ExportFile(path, NameOf(path))).SelectMany(file => ZipEntries.IsArchive(file.Path) ? zip.Of(file) : [file]));
        }

        return files;
    }

    /// <summary>A file, or what a folder holds of files that may be exports.</summary>
    private List<string> Named(string entry)
    {
        string path = Path.GetFullPath(Path.Combine(_root, entry));
        return Directory.Exists(path) ? [.. Matching($"{entry}/*").Where(IsExport)] : [path];
    }

    private static bool IsExport(string path)
        => ZipEntries.TextEndings.Concat([".zip", ".gz", ".xlsx", ".xlsm", ".xls"]).Any(ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));

    private List<string> Matching(string pattern)
    {
        string whole = pattern.Replace('\\', '/');
        string start = Path.IsPathRooted(whole) ? Path.GetPathRoot(whole)! : _root;
        string[] segments = whole[(Path.IsPathRooted(whole) ? start.Length : 0)..].Split('/', StringSplitOptions.RemoveEmptyEntries);
        var found = new List<string>();
        Walk(start, segments, found);
        found.Sort(StringComparer.Ordinal);
        return found;
    }

    private string[] Listed(string folder, Func<string, string, EnumerationOptions, string[]> list)
    {
        try
        {
            return list(folder, "*", Options);
        }
        catch (UnauthorizedAccessException)
        {
            _closed.Add(folder);
            return [];
        }
    }

    private void Walk(string folder, ReadOnlySpan<string> segments, List<string> found)
    {
        if (segments.Length == 0 || !Directory.Exists(folder))
        {
            return;
        }

        if (segments[0] == "**")
        {
            Walk(folder, segments[1..], found);
            foreach (string inner in Listed(folder, Directory.GetDirectories).Where(inner => new DirectoryInfo(inner).LinkTarget is null))
            {
                Walk(inner, segments, found); // links are not followed here: they may lead in a circle
            }
        }
        else if (segments.Length > 1)
        {
            foreach (string inner in IsPattern(segments[0]) ? Named(Listed(folder, Directory.GetDirectories), segments[0]) : [Path.GetFullPath(Path.Combine(folder, segments[0]))])
            {
                Walk(inner, segments[1..], found);
            }
        }
        else
        {
            found.AddRange(Named(Listed(folder, Directory.GetFiles), segments[0]).Where(path => !_own.Any(folder => path.StartsWith(folder, StringComparison.Ordinal))));
        }
    }

    private static IEnumerable<string> Named(string[] paths, string pattern)
        => paths.Where(path => FileSystemName.MatchesSimpleExpression(pattern, Path.GetFileName(path.AsSpan()), ignoreCase: true) && !IsPassedOver(path));

    /// <summary>What programs put beside a file for themselves: locks of workbooks, and what macOS keeps of a file's colour.</summary>
    private static bool IsPassedOver(string path) => Path.GetFileName(path.AsSpan()) is ['~', '$', ..] or ['.', '_', ..];

    private string NameOf(string path)
    {
        string relative = Path.GetRelativePath(_root, path).Replace('\\', '/');
        return relative.StartsWith("../../../", StringComparison.Ordinal) ? path : relative;
    }
}
