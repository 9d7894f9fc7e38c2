using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Units;
using NodaTime;

namespace ClimateLens.Reports.Charts;

/// <summary>Makes charts of a review's hours.</summary>
internal static class WeekCharts
{
    /// <summary>A chart over the review's hours, with nights shaded and waterings marked.</summary>
    public static WeekChart Of(Review review, IReadOnlyList<ChartPanel> panels) => new(
        panels,
        [.. review.Hours.Select(h => LocalTimes.Moment(h.Start))],
        [.. Days(review)],
        [.. Nights(review)],
        [.. Marks(review)]);

    /// <summary>One line from the hours.</summary>
    public static HourLine Line(Review review, string name, string colour, string dash, int decimals, Func<ReviewHour, double?> value)
        => new(name, colour, dash, [.. review.Hours.Select(value)], decimals);

    private static IEnumerable<(int Hour, string Name)> Days(Review review)
    {
        for (int i = 0; i < review.Hours.Length; i++)
        {
            if (i == 0 || review.Hours[i].Start.Date != review.Hours[i - 1].Start.Date)
            {
                yield return (i, LocalTimes.AxisDay(review.Hours[i].Start.Date));
            }
        }
    }

    private static IEnumerable<(int From, int To)> Nights(Review review)
    {
        for (int i = 0; i < review.Hours.Length; i++)
        {
            int from = i;
            while (i < review.Hours.Length && review.Hours[i].Night)
            {
                i++;
            }

            if (i > from)
            {
                yield return (from, i);
            }
        }
    }

    private static IEnumerable<WateringMark> Marks(Review review)
    {
        Instant start = review.Period.From.ToInstant();
        return (review.Waterings ?? []).Select(w => new WateringMark(
            (w.Start.ToInstant() - start).TotalHours,
            w is { WetsLeaves: true, AfterCutOff: true },
            $"{LocalTimes.Moment(w.Start)}: {(w.Method is null ? Phrase.Of("watering") : Words.Method(w.Method))}{(w is { WetsLeaves: true, AfterCutOff: true } ? Phrase.Of(", after the cut-off") : "")}"));
    }
}
