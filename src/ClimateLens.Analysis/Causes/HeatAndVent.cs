using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>A minimum of heat and vent in the hours before sunrise: vents at least a tenth open, and heat that keeps the air a kelvin warmer than it was.</summary>
/// <remarks>Heating while venting before sunrise to drive damp air out is common practice, no source; three hours, a tenth and a kelvin are choices of this project.</remarks>
internal static class HeatAndVent
{
    /// <summary>Least opening of the vents. [1]</summary>
    public const double LeastVent = 0.1;

    /// <summary>What the heat adds to the air temperature. [K]</summary>
    public const double WarmerK = 1;

    /// <summary>From how long before sunrise.</summary>
    public static readonly Duration Before = Duration.FromHours(3);

    /// <summary>Warmth added to each step of a house period, none in its run-in. [K]</summary>
    public static double[] Warmth(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        double[] warmer = new double[axis.Count];
        for (int i = 0; i < warmer.Length; i++)
        {
            Instant middle = axis.StartOf(i) + (axis.Step / 2);
            warmer[i] = period.Sun.NextSunrise(middle) is Instant sunrise && i >= period.FirstStep && sunrise - middle <= Before ? WarmerK : 0;
        }

        return warmer;
    }

    /// <summary>The balance's columns with that heat and vent.</summary>
    /// <param name="inputs">The columns as they were.</param>
    /// <param name="warmth">Warmth added by step. [K]</param>
    public static BalanceInputs Of(BalanceInputs inputs, ReadOnlySpan<double> warmth)
    {
        double[] air = inputs.AirC.ToArray(), vent = inputs.Vent.ToArray();
        for (int i = 0; i < air.Length; i++)
        {
            air[i] += warmth[i];
            if (warmth[i] > 0 && vent.Length > 0)
            {
                vent[i] = Math.Max(vent[i], LeastVent);
            }
        }

        return inputs with { AirC = air, Vent = vent };
    }
}
