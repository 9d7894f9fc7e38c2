using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Text;

/// <summary>Opens plain files of the disk, and nothing that only looks like one: a pipe or a device would be waited for without end.</summary>
internal static class DiskFile
{
    /// <summary>Length of what a path leads to, links followed; null when there is no file. Pipes and devices have 0. [bytes]</summary>
    public static long? LengthOf(string path)
    {
        try
        {
            var info = new FileInfo(path);
            FileSystemInfo? target = info.LinkTarget is null ? info : info.ResolveLinkTarget(returnFinalTarget: true);
            return target is FileInfo { Exists: true } file ? file.Length : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null; // a link in a circle, or a folder that is closed: opening it tells
        }
    }

    /// <summary>Opens a file; null and what is wrong when it can't be opened. One that holds nothing is not opened.</summary>
    public static FileStream? TryOpen(ExportFile file, out Problem? problem)
    {
        problem = null;
        if (Directory.Exists(file.Path))
        {
            problem = ProblemCodes.Folder.In(file.Name, null, null, "a folder", "a file");
            return null;
        }

        if (LengthOf(file.Path) == 0)
        {
            problem = ProblemCodes.Empty.In(file.Name, null, null, "an empty file, or a pipe or device", "data");
            return null;
        }

        try
        {
            return new FileStream(file.Path, new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 0, Share = FileShare.ReadWrite | FileShare.Delete });
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            problem = ProblemCodes.NotFound.In(file.Name, null, null, "no such file", "a file");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problem = ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be opened", "a file that can be read");
        }

        return null;
    }
}
