using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Logs.Describe.Words;

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
            string? hint = dayFirst ?? (tallies[0].Format.Text.Contains('.') && Array.Exists(tallies, t => t.Format.Text.StartsWith("d.", StringComparison.Ordinal) || t.Format.Text.StartsWith("dd.", StringComparison.Ordinal)) ? "dates with points have it" : null);
            if (FormatChoice.Of(tallies, [.. study.Mixed.Where(m => m.Source == place.Key)], hint) is { } guess)
            {
                guesses.Add(guess);
            }
        }

        TimeGuess? best = guesses.OrderBy(g => Rank(g, study)).FirstOrDefault();
        if (best is null)
        {
            return null;
        }

        return best with { End = EndOf(best, guesses, study), Year = YearOf(best, study) };
    }

    /// <summary>Lower is better: stamps that leave no doubt first, dates without a time of day last.</summary>
    private static (int, int, int, int) Rank(TimeGuess guess, Study study)
    {
        HeaderText header = study.Headers[guess.Source.Date];
        StampHolds holds = guess.Formats[0].Holds;
        int kind = holds.HasFlag(StampHolds.Yearless) ? 3 : !holds.HasFlag(StampHolds.TimeOfDay) ? 4 : 0;
        int read = guess.Share > 0.9 && guess.Tally.Rows > 0.9 * study.Rows ? 0 : 1;
        int named = (header.Has(Idea.End) && !header.Has(Idea.Start)) || header.Has(Idea.Reentry) ? 1 : 0;
        int clear = guess.NamesOffset ? 0 : guess.Sureness == Sureness.Unsure ? 3 : guess.Tally.Order.UsualStep().Micros == 0 ? 2 : 1;
        int odd = guess.Tally.Order.Oddities() * 50 > guess.Tally.Rows ? 1 : 0;
        return ((read * 10) + kind, odd + named, clear, guess.Source.Date);
    }

    /// <summary>A second time that always lies behind the first by no more than a day is the end of an interval.</summary>
    private static int EndOf(TimeGuess start, List<TimeGuess> guesses, Study study)
    {
        foreach (TimeGuess end in guesses)
        {
            bool whole = end.Source.TimeOfDay < 0 && start.Source.TimeOfDay < 0 && end.Source != start.Source && end.Formats[0].Text == start.Formats[0].Text;
            if (!whole || !study.Headers[end.Source.Date].Has(Idea.End))
            {
                continue;
            }

            int behind = 0;
            int both = 0;
            foreach (Reading.SampleRow row in study.Sample)
            {
                if (start.Tally.TryRead(start.Source.Text(row.Cells), out long from) && end.Tally.TryRead(end.Source.Text(row.Cells), out long to))
                {
                    both++;
                    behind += to > from && to - from <= Times.CivilDate.DayMicros ? 1 : 0;
                }
            }

            if (both > 0 && behind > 0.95 * both)
            {
                return end.Source.Date;
            }
        }

        return -1;
    }

    private static int? YearOf(TimeGuess guess, Study study)
    {
        if (!guess.IsYearless)
        {
            return null;
        }

        ImmutableArray<HeaderText> headers = study.Headers;
        for (int i = 0; i < headers.Length; i++)
        {
            string[] cells = [.. study.Sample.Select(r => i < r.Cells.Length ? r.Cells[i] : "").Distinct()];
            bool isYear = cells.Length == 1 && int.TryParse(cells[0], NumberStyles.None, CultureInfo.InvariantCulture, out int year) && year is >= 1950 and < 2200;
            if (isYear)
            {
                return int.Parse(cells[0], NumberStyles.None, CultureInfo.InvariantCulture);
            }
        }

        return null;
    }
}
