using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Agreement;

/// <summary>How many pots two people must grade side by side to find out whether they differ.</summary>
/// <remarks>
/// <para><b>Formula:</b> pairs for a two-sided test of a mean difference: <c>n = (z₁₋α/₂ + z_power)² s²/δ² + z²₁₋α/₂/2</c>, rounded up.</para>
/// <para><b>Source:</b> [GUENTHER81] (memory). <b>Error:</b> within a pair of the exact non-central t count from 10 pairs on (test: two counts of [RSTATS], from memory).</para>
/// </remarks>
public static class SideBySideRound
{
    /// <summary>Chance of calling alike graders different. Usual choice. [1]</summary>
    public const double FalseAlarm = 0.05;

    /// <summary>Chance of finding a difference that is there. Usual choice. [1]</summary>
    public const double Power = 0.9;

    /// <summary>A difference worth finding: half a level, the finest step of a grade. Choice of this project. [levels]</summary>
    public const double WorthFinding = 0.5;

    /// <summary>Standard deviation of the difference of two graders on one pot before it is known. Assumed: about that of two people who grade to half levels. [levels]</summary>
    public const double AssumedDeviation = 0.7;

    /// <summary>Pots needed.</summary>
    /// <param name="deviation">Standard deviation of the differences, above 0, up to 100.</param>
    /// <param name="difference">Mean difference to find, above 0, up to 100, in the same unit.</param>
    /// <param name="power">Chance of finding it, 0.5 to 0.999. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is impossible.</exception>
    public static int Pots(double deviation, double difference = WorthFinding, double power = Power)
    {
        double s = Guard.AboveUpTo(Guard.Finite(deviation), 0, 100, "(unit of the difference)");
        double delta = Guard.AboveUpTo(Guard.Finite(difference), 0, 100, "(unit of the difference)");
        double found = Normal.InvCDF(0, 1, Guard.Within(Guard.Finite(power), 0.5, 0.999, "(share)"));
        double alarm = Normal.InvCDF(0, 1, 1 - (FalseAlarm / 2));
        double ratio = (alarm + found) * s / delta;
        return Math.Max(3, (int)Math.Ceiling((ratio * ratio) + (alarm * alarm / 2)));
    }
}
