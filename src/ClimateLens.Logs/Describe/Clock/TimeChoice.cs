using ClimateLens.Logs.Describe.Words;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Chooses the column of the time among those that may hold it.</summary>
internal static class TimeChoice
{
    /// <summary>The choice; null when no column holds times.</summary>
    /// <param name="study">The file.</param>
    /// <param name="dayFirst">What other marks of the file say of the order of day and month, or null.</param>
    public static TimeGuess? Of(Study study, string? dayFirst)
    {
        List<TimeGuess> guesses = [];
        foreach (IGrouping<TimeSource, StampTally> place in study.Stamps.GroupBy(t => t.Source))
        {
            StampTally[] tallies = [.. place];
            if (FormatChoice.Of(tallies, [.. study.Mixed.Where(m => m.Source.Equals(place.Key))], dayFirst) is { } guess)
            {
                guesses.Add(guess);
            }
        }

        TimeGuess? best = guesses.OrderBy(g => Rank(g, study)).FirstOrDefault();
        if (best is null)
        {
            return null;
        }

        return best with { End = EndOf(best, guesses, study) };
    }

    /// <summary>Lower is better: stamps that leave no doubt first, dates without a time of day last.</summary>
    private static (int, int, int, int) Rank(TimeGuess guess, Study study)
    {
        HeaderText header = study.Headers[guess.Source.First];
        StampHolds holds = guess.Formats[0].Holds;
        int kind = holds.HasFlag(StampHolds.Yearless) ? 3 : !holds.HasFlag(StampHolds.TimeOfDay) ? 4 : 0;
        int read = guess.Share > 0.9 && guess.Tally.Rows > 0.9 * study.Rows ? 0 : 1;
        int named = (header.Has(Idea.End) && !header.Has(Idea.Start)) || header.Has(Idea.Reentry) ? 1 : 0;
        int clear = guess.NamesOffset ? 0 : guess.Sureness == Sureness.Unsure ? 3 : guess.Tally.Order.UsualStep().Micros == 0 ? 2 : 1;
        int odd = guess.Tally.Order.Oddities() * 50 > guess.Tally.Rows ? 1 : 0;
        return ((read * 10) + kind, odd + named, clear, guess.Source.First);
    }

    /// <summary>
    /// A second time that always lies behind the first by no more than a day is the end of an interval: whole, or as a time of day alone.
    /// </summary>
    private static TimeSource? EndOf(TimeGuess start, List<TimeGuess> guesses, Study study)
    {
        IEnumerable<TimeSource> ends = guesses.Where(g => !g.Source.Equals(start.Source) && g.Formats[0].Text == start.Formats[0].Text).Select(g => g.Source)
            .Concat(Enumerable.Range(0, study.Headers.Length).Where(c => study.Layout.Sorts[c] == Cutting.CellSort.Stamp && start.Source.Columns.Length == 2).Select(c => new TimeSource(start.Source.First, c)));
        return ends.FirstOrDefault(end => study.Headers[end.Columns[^1]].Has(Idea.End) && !start.Source.Has(end.Columns[^1]) && IsBehind(start, end, study)) is { } found
            ? found.First == start.Source.First ? new TimeSource(found.Columns[^1]) : found
            : null;
    }

    private static bool IsBehind(TimeGuess start, TimeSource end, Study study)
    {
        int behind = 0;
        int both = 0;
        foreach (Reading.SampleRow row in study.Sample)
        {
            if (start.Tally.TryRead(start.Source.Text(row.Cells), out long from) && start.Tally.TryRead(end.Text(row.Cells), out long to))
            {
                both++;
                behind += (to > from && to - from <= CivilDate.DayMicros) || (end.First == start.Source.First && to < from) ? 1 : 0;
            }
        }

        return both > 0 && behind > 0.95 * both;
    }
}
