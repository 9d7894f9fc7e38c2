using System.Collections.Immutable;
using System.Security;
using System.Text;

namespace ClimateLens.Logs.Starter;

/// <summary>The folder of a new nursery: a nursery file with remarks, places for exports and notebooks, and schedules to choose from.</summary>
public static class StarterFolder
{
    private const string NurseryFile = "nursery.toml", Schedules = "schedules/", Program = "climatelens", UnixProgram = "/usr/local/bin/climatelens", UnixPlace = "/srv/nursery", WindowsPlace = @"C:\Nursery";

    private static readonly string[] Files = [NurseryFile, Schedules + "climatelens.service", Schedules + "climatelens.timer", Schedules + "climatelens-doctor.service", Schedules + "climatelens-doctor.timer", Schedules + "crontab.txt", Schedules + "windows-task.xml"];

    private static readonly string[] Folders = ["exports", "notebooks"];

    /// <summary>Makes the folder, or fills one that holds none of these files; no file is ever written over.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>What was made, relative to the folder, with '/'.</returns>
    /// <exception cref="StoreUnavailableException">One of the files is there already, or the folder cannot be written; the message says which.</exception>
    public static ImmutableArray<string> Make(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        string root = Path.GetFullPath(folder);
        try
        {
            foreach (string file in Files.Where(f => Path.Exists(PathOf(root, f))))
            {
                throw new StoreUnavailableException($"{PathOf(root, file)} is there already; nothing was changed.");
            }

            foreach (string inner in Folders)
            {
                Directory.CreateDirectory(PathOf(root, inner));
            }

            foreach (string file in Files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(PathOf(root, file))!);
                using FileStream stream = new(PathOf(root, file), FileMode.CreateNew, FileAccess.Write);
                stream.Write(Encoding.UTF8.GetBytes(InPlace(TextOf(file), root)));
            }

            return [.. Files, .. Folders.Select(f => f + "/")];
        }
        catch (Exception e) when (e is (IOException and not StoreUnavailableException) or UnauthorizedAccessException)
        {
            throw new StoreUnavailableException($"The folder {root} cannot be made: {e.Message}", e);
        }
    }

    private static string PathOf(string root, string relative) => Path.Combine(root, relative.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>The schedules with the folder's own path, and that of the program at work, where these mean the same to every reader of them.</summary>
    private static string InPlace(string text, string root)
    {
        if (Environment.ProcessPath is string program && Path.GetFileName(program) == Program && IsPlain(program))
        {
            text = text.Replace(UnixProgram, program, StringComparison.Ordinal);
        }

        return !IsPlain(root) ? text
            : Path.DirectorySeparatorChar == '/' ? text.Replace(UnixPlace, root, StringComparison.Ordinal)
            : text.Replace(WindowsPlace, SecurityElement.Escape(root), StringComparison.Ordinal);
    }

    /// <summary>Whether a path means the same to shells, systemd and cron without quotes.</summary>
    public static bool IsPlain(string path) => path.All(c => char.IsAsciiLetterOrDigit(c) || c is '/' or '\\' or ':' or '-' or '_' or '.');

    private static string TextOf(string file)
    {
        using Stream stream = typeof(StarterFolder).Assembly.GetManifestResourceStream("starter/" + file)
            ?? throw new InvalidOperationException($"The program lacks its starter file {file}.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
