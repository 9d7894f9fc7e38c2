namespace ClimateLens.Science.Irrigation;

/// <summary>Dose is volume times concentration, volume is flow times time.</summary>
/// <remarks>
/// Identities; 1 ppm of mass in volume is 1 mg/L, 1 mm of water is 1 L/m². <b>Range:</b> finite values that are not negative (flows and diameters above 0); else an
/// <see cref="ArgumentOutOfRangeException"/>. <b>Error:</b> that of what was measured: an emitter's flow and the pots' share of it (<see cref="CatchCups"/>).
/// </remarks>
public static class Dose
{
    /// <summary>Active ingredient that a pot gets. [mg]</summary>
    /// <param name="volumeMl">Solution a pot. [mL]</param>
    /// <param name="concentrationMgL">Active ingredient in the solution. [mg/L]</param>
    public static double MilligramPerPot(double volumeMl, double concentrationMgL) => Amount(volumeMl) / 1000 * Amount(concentrationMgL);

    /// <summary>Solution to mix. [L]</summary>
    /// <param name="pots">Number of pots.</param>
    /// <param name="volumeMl">Solution a pot. [mL]</param>
    /// <param name="overagePct">What is mixed beyond that, for lines and losses, 0 to 100. [%]</param>
    public static double SolutionLitres(int pots, double volumeMl, double overagePct)
        => Amount(pots) * Amount(volumeMl) / 1000 * (1 + (Guard.Within(Guard.Finite(overagePct), 0, 100, "%") / 100));

    /// <summary>Volume that an emitter gives. [mL]</summary>
    /// <param name="flowLh">Flow of the emitter. [L/h]</param>
    /// <param name="minutes">Time. [min]</param>
    public static double EmitterMl(double flowLh, double minutes) => Amount(flowLh) * 1000 * Amount(minutes) / 60;

    /// <summary>Time that an emitter needs. [min]</summary>
    /// <param name="volumeMl">Volume. [mL]</param>
    /// <param name="flowLh">Flow of the emitter, above 0. [L/h]</param>
    public static double EmitterMinutes(double volumeMl, double flowLh) => Amount(volumeMl) / 1000 / Guard.AboveUpTo(Guard.Finite(flowLh), 0, double.MaxValue, "L/h") * 60;

    /// <summary>Water that falls on a pot's top. [mL]</summary>
    /// <param name="depthMm">Depth of overhead water. [mm]</param>
    /// <param name="potDiameterCm">Diameter of the pot's top, above 0. [cm]</param>
    public static double OnPotTopMl(double depthMm, double potDiameterCm)
    {
        double d = Guard.AboveUpTo(Guard.Finite(potDiameterCm), 0, 1000, "cm");
        return Amount(depthMm) * Math.PI * d * d / 40;
    }

    /// <summary>Share of the water given that runs through. [1]</summary>
    /// <param name="drainedMl">What ran through. [mL]</param>
    /// <param name="appliedMl">What was given, above 0 and at least what ran through. [mL]</param>
    public static double LeachingFraction(double drainedMl, double appliedMl)
    {
        double applied = Guard.AboveUpTo(Guard.Finite(appliedMl), 0, double.MaxValue, "mL");
        return Guard.Within(Guard.Finite(drainedMl), 0, applied, "mL") / applied;
    }

    private static double Amount(double value) => Guard.Within(Guard.Finite(value), 0, double.MaxValue, "(amount)");
}
