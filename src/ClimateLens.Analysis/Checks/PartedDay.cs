using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;

namespace ClimateLens.Analysis.Checks;

/// <summary>A day on which two sensors differ by more than they may.</summary>
/// <param name="First">Its first step.</param>
/// <param name="End">The step behind its last.</param>
/// <param name="Mean">Mean difference. [SI unit of the channel]</param>
/// <param name="InPeriod">Whether it lies in the period rather than the run-in.</param>
internal readonly record struct PartedDay(int First, int End, double Mean, bool InPeriod)
{
    /// <summary>A day is judged when both have values in a quarter of it; choice of this project, no source. [h]</summary>
    private const int FewestHours = 6;

    /// <summary>The days, 24 h each counted from the start of the period both ways, whose mean difference exceeds what is allowed.</summary>
    public static ImmutableArray<PartedDay> Of(HousePeriod period, double[] differences, double allowed)
    {
        int day = 24 * period.StepsPerHour;
        ImmutableArray<PartedDay>.Builder days = ImmutableArray.CreateBuilder<PartedDay>();
        for (int start = (period.FirstStep % day) - day; start < differences.Length; start += day)
        {
            int first = Math.Max(0, start), end = Math.Min(differences.Length, start + day);
            double[] both = end <= first ? [] : [.. differences[first..end].Where(double.IsFinite)];
            if (both.Length >= FewestHours * period.StepsPerHour && Math.Abs(both.Average()) > allowed)
            {
                days.Add(new PartedDay(first, end, both.Average(), first >= period.FirstStep));
            }
        }

        return days.ToImmutable();
    }
}
