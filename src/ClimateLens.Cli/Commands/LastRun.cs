using System.Text.Json;
using System.Text.Json.Serialization;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Logs.Health;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Cli.Commands;

/// <summary>
/// What the last whole run had to tell, kept in the store for the doctor: nobody watches the run, and some of what it tells (a file that may not be read, a faulty
/// notebook) shows nowhere else. A run without a word leaves no such file.
/// </summary>
internal static class LastRun
{
    private const string Name = "last-run.json";
    private const int MostKept = 20;

    /// <summary>Keeps it; a disk that does not take it has been told of already.</summary>
    /// <param name="store">Folder of the store, full path.</param>
    /// <param name="result">What the run did.</param>
    public static void Keep(string store, CommandResult result)
    {
        string path = Path.Combine(store, Name);
        try
        {
            if (result.ExitCode == ExitCode.Done)
            {
                File.Delete(path);
                return;
            }

            string[] told = [.. result.Problems.Where(p => p.Severity != Severity.Note).OrderByDescending(p => p.Severity).Select(p => Messages.Plain(p.ToString())).Distinct(StringComparer.Ordinal).Take(MostKept)];
            File.WriteAllBytes(path, JsonSerializer.SerializeToUtf8Bytes(new LastRunNote(result.ExitCode, told), LastRunJson.Default.LastRunNote));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
        }
    }

    /// <summary>The doctor's line; none where the run had nothing to tell.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Its folder.</param>
    public static IEnumerable<CheckupLine> Of(NurserySettings nursery, string nurseryFolder)
    {
        LastRunNote? note = null;
        try
        {
            string path = Path.Combine(ReadingStore.FolderOf(nursery, nurseryFolder), Name);
            note = File.Exists(path) ? JsonSerializer.Deserialize(File.ReadAllBytes(path), LastRunJson.Default.LastRunNote) : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException)
        {
            // the look at the store's folder tells of it
        }

        if (note is not null)
        {
            string first = note.Told.Length == 0 ? "" : $" {note.Told[0]}", more = note.Told.Length > 1 ? $" And {note.Told.Length - 1} more." : "";
            yield return new CheckupLine("run.last", false, FormattableString.Invariant($"The last run ended with {note.ExitCode}.{first}{more}"), "Mend what is named, then run climatelens run with --verbose, which tells all of it; this line goes with the first run that ends with 0.");
        }
    }
}

/// <summary>What is kept of a run.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="Told">Errors and warnings, the worst first.</param>
internal sealed record LastRunNote(int ExitCode, string[] Told);

[JsonSerializable(typeof(LastRunNote))]
internal sealed partial class LastRunJson : JsonSerializerContext;
