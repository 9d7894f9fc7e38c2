using ClimateLens.Logs.Describe.Clock;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Tables that lay the logs of several sensors side by side, each with a time of its own: an export reads one time a row, so the user is asked.</summary>
internal static class OtherTimes
{
    private const double Nearly = 0.9;

    /// <summary>The findings, with questions about values that stand behind another time than the one that is read.</summary>
    public static IReadOnlyList<ColumnFinding> Asked(Study study, TimeGuess time, IReadOnlyList<ColumnFinding> findings)
    {
        int[] others = [.. study.Stamps.Where(t => t.Source.Columns.Length == 1 && !time.Has(t.Source.First) && t.Format.Holds == StampHolds.Both && t.Read >= Nearly * study.Rows && IsOfItsOwn(study, time, t.Source))
            .Select(t => t.Source.First).Distinct()];
        return [.. findings.Select(f => Before(f, others, findings) is int other && !f.Channel.IsUnused ? f with { Channel = Question(f, other) } : f)];
    }

    private static ChannelGuess Question(ColumnFinding finding, int other)
        => ChannelGuess.Either($"column {other + 1} before it holds a time of its own, and the draft reads another: are its values of that one?", [.. finding.Channel.Channels]);

    /// <summary>The nearest other time in front of a column, if values stand in front of it in turn: two times side by side are one in two writings.</summary>
    private static int? Before(ColumnFinding finding, int[] others, IReadOnlyList<ColumnFinding> findings)
        => others.Where(o => o < finding.Facts.Column && findings.Any(f => !f.Channel.IsUnused && f.Facts.Column < o)).Select(o => (int?)o).DefaultIfEmpty().Max();

    /// <summary>It moves from row to row as a logger's time does, and is another than the time that is read.</summary>
    private static bool IsOfItsOwn(Study study, TimeGuess time, TimeSource other)
        => study.Sample.Select(row => other.Text(row.Cells)).Distinct(StringComparer.Ordinal).Count() >= Nearly * study.Sample.Count
            && study.Sample.Count(row => time.Source.Text(row.Cells) != other.Text(row.Cells)) * 2 > study.Sample.Count;
}
