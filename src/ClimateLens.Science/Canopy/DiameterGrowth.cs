namespace ClimateLens.Science.Canopy;

/// <summary>Width of a plant over time: a logistic curve.</summary>
/// <param name="LargestCm">Width in the end, 1 to 200. [cm]</param>
/// <param name="RatePerDay">Growth rate, 0.001 to 2. [1/d]</param>
/// <param name="HalfwayDay">Day after the start (pinch or potting) on which half the width is reached, -200 to 400. [d]</param>
/// <remarks>
/// <para><b>Formula:</b> <c>d(t) = D/(1 + exp(-k (t - t50)))</c>; back <c>t = t50 - ln(D/d - 1)/k</c>.</para>
/// <para><b>Source:</b> [VERHULST1838], from memory. <b>Error:</b> that of its three numbers; see <see cref="GrowthFit"/>.</para>
/// </remarks>
public readonly record struct DiameterGrowth(double LargestCm, double RatePerDay, double HalfwayDay)
{
    /// <summary>Width. [cm]</summary>
    /// <param name="day">Days after the start. [d]</param>
    public double DiameterCm(double day) => LargestCm / (1 + Math.Exp(-RatePerDay * (day - HalfwayDay)));

    /// <summary>Day on which a width is reached; NaN when it never is. [d]</summary>
    /// <param name="diameterCm">Width, above 0. [cm]</param>
    public double DayOf(double diameterCm) => diameterCm > 0 && diameterCm < LargestCm
        ? HalfwayDay - (Math.Log((LargestCm / diameterCm) - 1) / RatePerDay)
        : double.NaN;

    internal DiameterGrowth Checked()
    {
        Guard.Within(Guard.Finite(LargestCm), 1, 200, "cm", nameof(LargestCm));
        Guard.Within(Guard.Finite(RatePerDay), 0.001, 2, "1/d", nameof(RatePerDay));
        Guard.Within(Guard.Finite(HalfwayDay), -200, 400, "d", nameof(HalfwayDay));
        return this;
    }
}
