using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Editing;

namespace ClimateLens.Logs;

/// <summary>Changes a nursery file on disk: wholly or not at all.</summary>
public static class NurseryFileWriter
{
    /// <summary>Puts [[export]] tables into a nursery file.</summary>
    /// <param name="path">The file; where it is a link, what it points at is changed.</param>
    /// <param name="exports">The tables as text.</param>
    /// <exception cref="NurseryFileException">The file could not be read with the tables in it; it is left as it was.</exception>
    /// <exception cref="StoreUnavailableException">The file cannot be written; it is left as it was.</exception>
    public static void AddExports(string path, string exports)
    {
        string target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);
        byte[] before = File.ReadAllBytes(target);
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        byte[] after = ExportInsertion.Insert(path, before, exports, file => Path.Exists(Path.Combine(folder, file)));
        Replace(target, before, after);
    }

    private static void Replace(string target, byte[] before, byte[] after)
    {
        string draft = target + ".new";
        try
        {
            using (FileStream stream = new(draft, FileMode.Create, FileAccess.Write))
            {
                stream.Write(after);
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(draft, File.GetUnixFileMode(target));
            }

            if (!File.ReadAllBytes(target).AsSpan().SequenceEqual(before))
            {
                throw new IOException("it was changed by someone else meanwhile");
            }

            File.Move(draft, target, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Remove(draft);
            throw new StoreUnavailableException($"{target} cannot be written: {e.Message}", e);
        }
    }

    private static void Remove(string draft)
    {
        try
        {
            File.Delete(draft);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What could not be written need not be there; the nursery file itself is as it was.
        }
    }
}
