using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Wetness;

/// <summary>An opinion on wet leaves scored against a leaf-wetness sensor, with the range that whole days drawn again give.</summary>
/// <param name="Counts">Hours of hits, misses, false alarms and dry hours told right.</param>
/// <param name="Days">Days with at least half of their hours counted; only these are scored.</param>
/// <param name="Right">Share of hours told right. [1]</param>
/// <param name="HitShare">Share of the wet hours told as wet. [1]</param>
/// <param name="FalseAlarmShare">Share of the hours told as wet that the sensor had dry. [1]</param>
/// <param name="BiasHoursADay">Hours a day told as wet too many. [h/d]</param>
/// <param name="ErrorHoursADay">Mean size of a day's difference in wet hours. [h/d]</param>
/// <remarks>
/// <para><b>Formula:</b> ranges are the 5 to 95 % quantiles over 1000 draws of as many whole days with replacement [EFRON93] (from memory), since hours
/// of one night hang together; not known below five days (choice of this project). The seed fixes the draws.</para>
/// <para><b>Error:</b> a wetness sensor is no leaf: painted plates and sight differed by up to 2 h at a dew's onset [JIAS94] (abstract), and it tells
/// of the place it hangs in. The range covers the chance of the days only.</para>
/// </remarks>
public readonly record struct WetnessScore(
    WetnessCounts Counts, int Days, Interval Right, Interval HitShare, Interval FalseAlarmShare, Interval BiasHoursADay, Interval ErrorHoursADay)
{
    /// <summary>Fewest days that carry a range.</summary>
    public const int LeastDays = 5;

    private const int Draws = 1000;

    /// <summary>Scores an opinion.</summary>
    /// <param name="opinion">1 for wet, 0 for dry, NaN for no opinion.</param>
    /// <param name="sensor">The same of the sensor.</param>
    /// <param name="stepSeconds">Length of a step; a day must be a whole number of them. [s]</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The step does not divide a day.</exception>
    /// <remarks>Days are of 24 hours from the first step on; the last may be short. Begin the columns at noon, so that a night is not cut.</remarks>
    public static WetnessScore Of(ReadOnlySpan<double> opinion, ReadOnlySpan<double> sensor, double stepSeconds, ulong seed)
    {
        Guard.SameLength(opinion.Length, sensor.Length);
        int steps = (int)Math.Round(86400 / Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, 86400, "s"));
        Guard.Within(steps * stepSeconds, 86400 - 1e-6, 86400 + 1e-6, "s (steps of a day)", nameof(stepSeconds));
        List<WetnessCounts> days = [];
        for (int first = 0; first < opinion.Length; first += steps)
        {
            int length = Math.Min(steps, opinion.Length - first);
            var counts = WetnessCounts.Of(opinion.Slice(first, length), sensor.Slice(first, length), stepSeconds);
            if (counts.Hours >= 12)
            {
                days.Add(counts);
            }
        }

        return days.Count == 0
            ? new(default, 0, Interval.Unknown, Interval.Unknown, Interval.Unknown, Interval.Unknown, Interval.Unknown)
            : Score([.. days], new SeededRandom(seed));
    }

    private static WetnessScore Score(WetnessCounts[] days, SeededRandom random)
    {
        Summary found = Summary.Of(days);
        Summary[] drawn = new Summary[days.Length < LeastDays ? 0 : Draws];
        WetnessCounts[] again = new WetnessCounts[days.Length];
        for (int draw = 0; draw < drawn.Length; draw++)
        {
            for (int day = 0; day < again.Length; day++)
            {
                again[day] = days[(int)(random.NextDouble() * days.Length)];
            }

            drawn[draw] = Summary.Of(again);
        }

        Interval Range(Func<Summary, double> figure)
        {
            double[] figures = [.. drawn.Select(figure).Where(value => !double.IsNaN(value)).Order()];
            return new(figure(found), Quantiles.Of(figures, 0.05), Quantiles.Of(figures, 0.95));
        }

        return new(
            found.Counts, days.Length, Range(s => s.Counts.Right), Range(s => s.Counts.HitShare), Range(s => s.Counts.FalseAlarmShare),
            Range(s => s.Counts.BiasHoursADay), Range(s => s.ErrorHoursADay));
    }

    private readonly record struct Summary(WetnessCounts Counts, double ErrorHoursADay)
    {
        public static Summary Of(WetnessCounts[] days)
        {
            WetnessCounts all = default;
            double error = 0;
            foreach (WetnessCounts day in days)
            {
                all = all.Plus(day);
                error += Math.Abs(day.BiasHoursADay);
            }

            return new(all, error / days.Length);
        }
    }
}
