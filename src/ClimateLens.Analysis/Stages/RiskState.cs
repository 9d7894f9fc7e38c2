using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Analysis.WateringEvents;

namespace ClimateLens.Analysis.Stages;

/// <summary>The hours of run-in and period with their leaves, margins and risk, from the readings as they are. NaN where an hour has no data.</summary>
/// <param name="Hours">Hourly means.</param>
/// <param name="Draws">The draws of error.</param>
/// <param name="Probability">Share of the draws in which the hour is a risk hour. [1]</param>
public sealed record RiskState(HourTable Hours, BiasDraws Draws, double[] Probability)
{
    /// <summary>Leaf temperature by hour. [°C]</summary>
    public required double[] LeafC { get; init; }

    /// <summary>Dew point of the air among the leaves by hour. [°C]</summary>
    public required double[] DewPointC { get; init; }

    /// <summary>Leaf temperature less that dew point by hour. [K]</summary>
    public required double[] MarginK { get; init; }

    /// <summary>Wet (1), dry (0) or not known (NaN) by hour.</summary>
    public required double[] Wet { get; init; }

    /// <summary>Leaf temperature by step. [°C]</summary>
    public required double[] LeafStepC { get; init; }

    /// <summary>Wet (1), dry (0) or not known (NaN) by step.</summary>
    public required double[] WetStep { get; init; }

    /// <summary>Film by step; NaN where not known. [mm]</summary>
    public required double[] FilmStepMm { get; init; }

    /// <summary>The watering cut-off of each day.</summary>
    internal CutOffs CutOffs { get; init; } = CutOffs.None;

    /// <summary>What leaves could still lose after a watering; null where it was not prepared.</summary>
    internal DryingLeft? Drying { get; init; }

    /// <summary>Risk hours of the period, or null when the data do not carry a total.</summary>
    public required Estimate? Total { get; init; }

    /// <summary>Risk hours of the seven days before, or null.</summary>
    public required Estimate? TotalBefore { get; init; }

    /// <summary>What each cause of error brings to the total; empty without one.</summary>
    public required ImmutableArray<ErrorShare> Errors { get; init; }

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
