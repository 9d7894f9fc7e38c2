using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Drafting;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Describe;

/// <summary>Looks at files and drafts how the nursery file may read them.</summary>
public static class FileDescriber
{
    /// <summary>Describes files; those of one kind share a draft.</summary>
    /// <param name="paths">The files as the user named them.</param>
    /// <param name="options">What the user said.</param>
    public static Description Describe(IReadOnlyList<string> paths, DescribeOptions options)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(options);
        using var sources = new SourceFiles(options.Input);
        var problems = new List<Problem>();
        FileHead[] heads = [.. paths.Distinct(StringComparer.Ordinal).SelectMany(path => sources.Of(path, problems)).Select(file => Head(file, problems)).OfType<FileHead>()];
        List<DraftExport> drafts = [];
        List<List<FileHead>> kinds = [.. heads.GroupBy(h => h.Kind).Select(g => g.OrderBy(h => h.File.Name, StringComparer.Ordinal).ToList())];
        bool oneFile = heads.DistinctBy(h => h.File.Path).Count() == 1; // sheets and entries may well differ
        if (!oneFile && (kinds.Select(k => k[0].Dialect).Distinct().Count() > 1 || (kinds.Count > 1 && kinds.Exists(k => k[0].Layout.Fields > 3))))
        {
            problems.Add(Differ(kinds));
        }

        foreach (List<FileHead> kind in kinds)
        {
            drafts.AddRange(Draft(kind, options, problems));
        }

        ImmutableArray<DraftExport> distinct = [.. DistinctNames.Of(drafts, options.Name is not null)];
        return new Description(distinct, [.. problems], DraftText.Of(distinct));
    }

    private static FileHead? Head(SourceText file, List<Problem> problems)
    {
        try
        {
            FileHead? head = FileHead.Of(file, out string? fault);
            problems.AddRange(head is null ? [ProblemCodes.NotDescribed.In(file.Name, null, null, fault!, "rows of a time and values")] : Array.Empty<Problem>());
            return head;
        }
        catch (IOException)
        {
            problems.Add(ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be read to its end", "a file that can be read"));
            return null;
        }
    }

    private static List<DraftExport> Draft(List<FileHead> kind, DescribeOptions options, List<Problem> problems)
    {
        Study study = FileStudy.Of(kind);
        FileNumbers first = FileNumbers.Of(study, null);
        string? dayFirst = first.Marks is { Decimal: ",", Sureness: Sureness.Sure } ? "where a decimal comma is used, the day mostly stands first" : null;
        if (TimeChoice.Of(study, dayFirst) is not { } time)
        {
            problems.Add(ProblemCodes.NoTime.In(study.File.Name, study.Layout.DataLine, null, TimeFound(study), "a column with date and time, or two"));
            return [];
        }

        ImmutableArray<DraftExport> drafts = new DraftBuilder(study, time, FileNumbers.Of(study, time), options).Drafts();
        if (time.Formats.All(f => !f.Holds.HasFlag(StampHolds.TimeOfDay)) && drafts.Any(d => !d.IsOfRecords))
        {
            problems.Add(ProblemCodes.NoTime.In(study.File.Name, study.Layout.DataLine, null, "a day in each row, and no time of day", "a column with date and time, or two"));
            return [];
        }

        return Tried(drafts, study, options.TimeZone, problems);
    }

    private static List<DraftExport> Tried(ImmutableArray<DraftExport> drafts, Study study, string? zone, List<Problem> problems)
    {
        List<DraftExport> tried = [];
        foreach (DraftExport draft in drafts)
        {
            if (draft.Columns.IsEmpty)
            {
                problems.Add(ProblemCodes.NoChannel.In(study.File.Name, null, null, TimeFound(study).Replace("no column that holds times", "no channel", StringComparison.Ordinal), "a column that is a channel of readings or a field of a record"));
            }

            tried.Add(draft.Columns.IsEmpty ? draft : TrialReading.Of(draft, study.Files, study.OddCount, zone, out Problem? problem) is var read && problem is null ? read : Told(read, problem!, problems));
        }

        return tried;
    }

    private static DraftExport Told(DraftExport draft, Problem problem, List<Problem> problems)
    {
        problems.Add(problem);
        return draft;
    }

    private static string TimeFound(Study study)
    {
        string names = string.Join(", ", study.Headers.Select(h => h.Raw).Where(n => n.Length > 0).Take(8).Select(SafeText.Quote));
        return names.Length == 0 ? "no column that holds times" : $"no column that holds times among {names}";
    }

    private static Problem Differ(List<List<FileHead>> kinds)
    {
        string parts = string.Join("; ", kinds.Select(k => $"{k[0].File.Name}{(k.Count > 1 ? $" and {k.Count - 1} more" : "")}: {k[0].Layout.Cut.Evidence}, names in line {k[0].Layout.NamesLine}, {k[0].Encoding.Name}"));
        return ProblemCodes.KindsDiffer.In(null, null, null, $"files of {kinds.Count} kinds: {parts}", "files of one kind");
    }
}
