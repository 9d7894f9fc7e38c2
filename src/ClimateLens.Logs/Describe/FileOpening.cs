using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Describe;

/// <summary>Opens files that the user named.</summary>
internal static class FileOpening
{
    /// <summary>The file; null and what is wrong when it can't be read.</summary>
    public static SourceText? TryOpen(string path, out Problem? problem)
    {
        problem = null;
        if (Directory.Exists(path))
        {
            problem = ProblemCodes.Folder.In(path, null, null, "a folder", "a file", "Name the files in it.");
        }
        else if (!File.Exists(path))
        {
            problem = ProblemCodes.NotFound.In(path, null, null, "no such file", "a file", "Correct the path.");
        }
        else if (!CanOpen(path))
        {
            problem = ProblemCodes.Unreadable.In(path, null, null, "a file that cannot be opened", "a file that can be read");
        }
        else if (new FileInfo(path).Length == 0)
        {
            problem = ProblemCodes.Empty.In(path, null, null, "0 bytes", "rows of a time and values");
        }

        return problem is null ? new SourceText(Path.GetFullPath(path), path, () => Open(path)) : null;
    }

    private static bool CanOpen(string path)
    {
        try
        {
            Open(path).Dispose();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static FileStream Open(string path)
        => new(path, new FileStreamOptions { Options = FileOptions.SequentialScan, Share = FileShare.ReadWrite | FileShare.Delete });
}
