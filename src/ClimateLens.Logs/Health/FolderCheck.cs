using System.Globalization;

namespace ClimateLens.Logs.Health;

/// <summary>Whether a folder can be written, and whether the disk beneath it has room.</summary>
public static class FolderCheck
{
    /// <summary>Less free space than this is told whatever the folder holds. Common practice, no source. [bytes]</summary>
    private const long LeastFree = 200_000_000;

    private const string Probe = ".doctor-probe";

    internal static IEnumerable<CheckupLine> Of(string name, string folder, Machine machine)
    {
        string standing = Standing(folder);
        bool exists = standing == folder;
        yield return Writable(name, folder, standing, exists);
        yield return Room(name, folder, standing, exists, machine);
    }

    /// <summary>The folder, or the nearest one above it that there is: where it would be made.</summary>
    private static string Standing(string folder)
    {
        string at = Path.TrimEndingDirectorySeparator(folder);
        while (!Directory.Exists(at) && Path.GetDirectoryName(at) is { } above)
        {
            at = above;
        }

        return at == Path.TrimEndingDirectorySeparator(folder) ? folder : at;
    }

    private static CheckupLine Writable(string name, string folder, string standing, bool exists)
    {
        if (!exists && File.Exists(folder))
        {
            return CheckupLine.Look($"{name}.writable", $"The {name} folder {folder} is a file.", $"Name another {name} in the nursery file, or move the file away.");
        }

        return FaultOfWriting(standing) is string fault
            ? CheckupLine.Look($"{name}.writable", $"The {name} folder {folder} cannot be written: {fault}", "Give the user of the scheduled run the right to write there, or free the disk.")
            : CheckupLine.Fine($"{name}.writable", exists ? $"The {name} folder {folder} can be written." : $"The {name} folder {folder} is not there yet and can be made.");
    }

    /// <summary>What the system says when a file is made in a folder, and removed at once; null where that goes well.</summary>
    /// <param name="folder">A folder that is there.</param>
    public static string? FaultOfWriting(string folder)
    {
        try
        {
            using FileStream probe = new(Path.Combine(folder, Probe), FileMode.Create, FileAccess.Write, FileShare.ReadWrite, 1, FileOptions.DeleteOnClose);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return e.Message;
        }
    }

    private static CheckupLine Room(string name, string folder, string standing, bool exists, Machine machine)
    {
        if (machine.FreeBytes(standing) is not { } free)
        {
            return CheckupLine.Fine($"{name}.room", $"Free space for the {name} is not known: the system does not tell.");
        }

        // Changed files are written beside the old ones before these go, so at worst as much again is needed.
        long held = exists ? SizeOf(folder) : 0;
        string text = $"{Size(free)} free for the {name}, which takes {Size(held)}.";
        return free >= Math.Max(held, LeastFree)
            ? CheckupLine.Fine($"{name}.room", text)
            : CheckupLine.Look($"{name}.room", text, $"Free space on the disk: changed files are written beside the old ones, so as much as the {name} takes, and at least {Size(LeastFree)}, should be free.");
    }

    private static long SizeOf(string folder)
    {
        EnumerationOptions all = new() { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.ReparsePoint };
        return new DirectoryInfo(folder).EnumerateFiles("*", all).Sum(f => Length(f));
    }

    private static long Length(FileInfo file)
    {
        try
        {
            return file.Length;
        }
        catch (IOException)
        {
            return 0; // gone since it was listed
        }
    }

    private static string Size(long bytes) => bytes switch
    {
        >= 1_000_000_000 => (bytes / 1e9).ToString("0.0", CultureInfo.InvariantCulture) + " GB",
        >= 1_000_000 => (bytes / 1e6).ToString("0.0", CultureInfo.InvariantCulture) + " MB",
        _ => (bytes / 1e3).ToString("0.0", CultureInfo.InvariantCulture) + " kB",
    };
}
