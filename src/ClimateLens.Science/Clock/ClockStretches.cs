using System.Collections.Immutable;

namespace ClimateLens.Science.Clock;

/// <summary>Finds the days on which a clock was changed.</summary>
/// <remarks>
/// <para><b>Method:</b> binary segmentation: the medians of up to seven days before and after each day are compared; where they part by more than
/// <see cref="LeastStepMin"/> and more than their error, the series is cut where that explains most, and both parts are looked at again.</para>
/// <para><b>Source:</b> the idea of [SK74]; medians and limits of this project. <b>Error:</b> the day is found exactly when the scatter is small against the step; a change within
/// the last <see cref="FewestDays"/> days is not seen before there are so many.</para>
/// </remarks>
public static class ClockStretches
{
    /// <summary>Smallest change that counts as one: half an hour of a zone less what a sky may do. [min]</summary>
    public const double LeastStepMin = 25;

    /// <summary>Fewest days of a stretch. [d]</summary>
    public const int FewestDays = 2;

    /// <summary>Days on either side that are compared. [d]</summary>
    private const int Window = 7;

    /// <summary>A single day is off by this much however well the others agree. [min]</summary>
    private const double LeastScatterMin = 4;

    /// <summary>Standard error of a median over that of a mean, for a normal distribution: √(π/2). [1]</summary>
    private const double MedianPenalty = 1.2533;

    /// <summary>The stretches in time order; none for no days.</summary>
    /// <param name="days">Days in time order.</param>
    public static ImmutableArray<ClockStretch> Of(ReadOnlySpan<ClockDay> days)
    {
        List<int> cuts = [0];
        double scatter = Math.Max(LeastScatterMin, days.Length > 1 ? ClockScatter.DayToDayMin(days) : 0);
        Cut(days, 0, days.Length, scatter, cuts);
        cuts.Sort();
        var stretches = ImmutableArray.CreateBuilder<ClockStretch>();
        for (int i = 0; i < cuts.Count && days.Length > 0; i++)
        {
            int end = i + 1 < cuts.Count ? cuts[i + 1] : days.Length;
            ReadOnlySpan<ClockDay> part = days[cuts[i]..end];
            stretches.Add(new ClockStretch(cuts[i], part.Length, ClockScatter.MedianMin(part), ErrorMin(part, scatter)));
        }

        return stretches.ToImmutable();
    }

    /// <summary>Twice the standard error of the median; the larger of the scatter about it and of that from day to day rules. [min]</summary>
    private static double ErrorMin(ReadOnlySpan<ClockDay> part, double scatter)
    {
        double median = ClockScatter.MedianMin(part);
        double[] distances = new double[part.Length];
        for (int i = 0; i < distances.Length; i++)
        {
            distances[i] = Math.Abs(part[i].OffsetMin - median);
        }

        Array.Sort(distances);
        double about = ClockScatter.NormalMad * Statistics.Quantiles.Of(distances, 0.5);
        return 2 * MedianPenalty * Math.Max(scatter, about) / Math.Sqrt(part.Length);
    }

    private static void Cut(ReadOnlySpan<ClockDay> days, int from, int to, double scatter, List<int> cuts)
    {
        int best = -1;
        double gain = 0;
        for (int at = from + FewestDays; at <= to - FewestDays; at++)
        {
            ReadOnlySpan<ClockDay> before = days[Math.Max(from, at - Window)..at], after = days[at..Math.Min(to, at + Window)];
            double left = ClockScatter.MedianMin(before), right = ClockScatter.MedianMin(after);
            double error = 2 * MedianPenalty * scatter * Math.Sqrt((1.0 / before.Length) + (1.0 / after.Length));
            if (Math.Abs(right - left) < LeastStepMin + (error / 2) || Math.Abs(right - left) < 1.5 * error)
            {
                continue;
            }

            ReadOnlySpan<ClockDay> both = days[Math.Max(from, at - Window)..Math.Min(to, at + Window)];
            double explained = ClockScatter.MisfitMin(both, ClockScatter.MedianMin(both)) - ClockScatter.MisfitMin(before, left) - ClockScatter.MisfitMin(after, right);
            (best, gain) = explained > gain ? (at, explained) : (best, gain);
        }

        if (best >= 0)
        {
            cuts.Add(best);
            Cut(days, from, best, scatter, cuts);
            Cut(days, best, to, scatter, cuts);
        }
    }
}
