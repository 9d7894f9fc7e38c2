using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Uncertainty;

namespace ClimateLens.Analysis.Stages;

/// <summary>The hours of run-in and period with their margins and risk. NaN where an hour has no data.</summary>
/// <param name="Hours">Hourly means.</param>
/// <param name="Draws">The draws of sensor error.</param>
/// <param name="DewPointC">Dew point by hour, from the readings as they are. [°C]</param>
/// <param name="MarginK">Dew-point margin at the leaf by hour, from the readings as they are. [K]</param>
/// <param name="Probability">Share of the draws in which the hour is a risk hour. [1]</param>
public sealed record RiskState(HourTable Hours, BiasDraws Draws, double[] DewPointC, double[] MarginK, double[] Probability)
{
    /// <summary>Risk hours of the period, or null when the data do not carry a total.</summary>
    public required Estimate? Total { get; init; }

    /// <summary>Risk hours of the seven days before, or null.</summary>
    public required Estimate? TotalBefore { get; init; }

    /// <summary>Whether an hour is a risk hour more likely than not.</summary>
    public bool IsRisk(int hour) => Probability[hour] >= 0.5;

    /// <summary>Risk hours among the hours that begin in [from, to).</summary>
    public int Count(NodaTime.Instant from, NodaTime.Instant to)
    {
        int count = 0;
        for (int h = Math.Max(0, Hours.IndexOf(from)); h < Hours.Count && Hours.StartOf(h) < to; h++)
        {
            count += Hours.StartOf(h) >= from && IsRisk(h) ? 1 : 0;
        }

        return count;
    }
}
