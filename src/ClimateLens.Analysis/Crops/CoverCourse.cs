using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Crops;

/// <summary>Ground cover of every local day of run-in and period.</summary>
/// <param name="First">The first day.</param>
/// <param name="Days">Cover by day: value, 5 % and 95 %. [1]</param>
/// <param name="Known">False where the nursery file does not tell; cover may then be anything from 0 to 1.</param>
public sealed record CoverCourse(LocalDate First, ImmutableArray<Estimate> Days, bool Known)
{
    /// <summary>Anything between bare ground and closed: quantiles of the even distribution from 0 to 1.</summary>
    public static Estimate Anything { get; } = new(0.5, 0.05, 0.95);

    /// <summary>Index of a day.</summary>
    public int IndexOf(LocalDate day) => Math.Clamp(Period.DaysBetween(First, day), 0, Days.Length - 1);

    /// <summary>Index of the day of each step.</summary>
    public int[] DaysOf(TimeAxis axis) => [.. Enumerable.Range(0, axis.Count).Select(i => IndexOf(axis.StartOf(i).InZone(axis.Zone).Date))];

    /// <summary>Cover at a quantile, drawn straight between 5, 50 and 95 % and on beyond them. [1]</summary>
    /// <param name="day">Index of the day.</param>
    /// <param name="quantile">0 to 1.</param>
    public double At(int day, double quantile)
    {
        Estimate cover = Days[day];
        double end = quantile < 0.5 ? cover.Low : cover.High;
        return Math.Clamp(cover.Value + ((end - cover.Value) * Math.Abs(quantile - 0.5) / 0.45), 0, 1);
    }
}
