using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ClimateLens.Logs.Describe.Drafting;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Describe;

/// <summary>Reads the files with the draft as the import would, and keeps nothing: a draft that does not work is found out at once.</summary>
internal static class TrialReading
{
    /// <summary>Larger files are not read a second time. [bytes]</summary>
    public const long MostBytes = 64L << 20;

    private const double MostLost = 0.02;

    /// <summary>The draft with a note of what the trial took; and a problem where it did not take nearly all.</summary>
    public static DraftExport Of(DraftExport draft, IReadOnlyList<SourceText> files, int oddLines, string? zone, out Problem? problem)
    {
        problem = null;
        bool blocked = draft.Keys.Any(k => k.IsAsked && k.Key != "files") || draft.Time.Any(k => k.IsAsked); // where the files lie is known here
        if (blocked || draft.Columns.All(c => c.Sureness == Sureness.Unsure) || files.Sum(f => f.Bytes) > MostBytes)
        {
            return draft;
        }

        try
        {
            ImportReport report = ExportChecker.Check(NurseryFile.Parse("draft", Encoding.UTF8.GetBytes(Nursery(draft, files, zone))), Path.GetTempPath());
            problem = Loss(report, draft, oddLines);
            return draft with { Notes = [.. draft.Notes, Told(report) + (zone is null && report.Sheets.Sum(s => s.SetAside) > 0 ? "; it knew no zone, so the hour that comes twice in autumn counts among those set aside" : "")] };
        }
        catch (NurseryFileException fault)
        {
            Problem first = fault.Problems.First(p => p.Severity == Severity.Error);
            problem = ProblemCodes.DraftRead.In(draft.Files[0], null, null, $"the draft cannot be used as it stands: {first.Found}", first.Expected);
            return draft;
        }
    }

    private static string Told(ImportReport report)
        => string.Create(CultureInfo.InvariantCulture, $"a trial reading took {report.Sheets.Sum(s => s.Accepted)} of {report.Sheets.Sum(s => s.RowsRead)} rows, set {report.Sheets.Sum(s => s.SetAside)} aside, and could not read {report.Sheets.Sum(s => s.CellsNotRead)} cells");

    private static Problem? Loss(ImportReport report, DraftExport draft, int oddLines)
    {
        Problem? error = report.Problems.FirstOrDefault(p => p.Severity == Severity.Error);
        if (error is not null)
        {
            return error;
        }

        long rows = report.Sheets.Sum(s => (long)s.RowsRead - s.Blank);
        long otherHouses = report.Problems.Where(p => p.Code == ProblemCodes.House.Code).Sum(p => (long)p.Count); // the trial knows one house
        long aside = Math.Max(0, report.Sheets.Sum(s => (long)s.SetAside) - oddLines - otherHouses);
        long cells = report.Sheets.Sum(s => (long)s.CellsNotRead);
        Problem? first = report.Problems.FirstOrDefault(p => p.Severity == Severity.Warning && p.Code != ProblemCodes.House.Code);
        return rows == 0 || aside > MostLost * rows || cells > MostLost * rows * draft.Columns.Length
            ? ProblemCodes.DraftRead.In(draft.Files[0], first?.Line, first?.Column, $"{Told(report)}; the first is {first?.Found ?? "none"}", first?.Expected ?? "rows")
            : null;
    }

    /// <summary>A nursery at no place in particular, with the clock of the one that the draft goes into; else one without summer time, so that no hour is missing.</summary>
    private static string Nursery(DraftExport draft, IReadOnlyList<SourceText> files, string? zone)
    {
        ImmutableArray<DraftKey> keys = [.. draft.Keys.Select(k => k.Key == "files" ? DraftKey.Of("files", TomlText.List(files.Select(f => f.Path).Distinct(StringComparer.Ordinal))) : k)];
        return $"""
            [nursery]
            name = "Trial"
            timeZone = {TomlText.Quote(zone ?? "Etc/UTC")}
            latitude = 0
            longitude = 0
            elevationM = 0
            [[house]]
            id = {TomlText.Quote(draft.House ?? "1")}
            {DraftText.Of([draft with { Keys = keys }])}
            """;
    }
}
