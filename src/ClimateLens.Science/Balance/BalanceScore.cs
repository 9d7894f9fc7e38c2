using System.Runtime.Intrinsics;

namespace ClimateLens.Science.Balance;

/// <summary>Scores a balance on days that it was not fitted to.</summary>
/// <remarks>
/// <b>Method:</b> every n-th day is held out, the balance is fitted to the others and run free through each held-out day from its first reading, with the day's own weather, vents and waterings.
/// </remarks>
public static class BalanceScore
{
    /// <summary>Scores the balance; null where it cannot be fitted without the days held out, or none of them can be scored.</summary>
    /// <param name="inputs">The readings.</param>
    /// <param name="every">Every how manyth day is held out, 2 or more.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is impossible.</exception>
    public static HeldOutScore? Of(BalanceInputs inputs, int every = HeldOutDays.Usual)
    {
        inputs.Check();
        HeldOutDays heldOut = HeldOutDays.Of(inputs, every);
        BalanceFit fit = BalanceFit.Of(inputs, day => !heldOut.Contains(day));
        if (!fit.IsFitted)
        {
            return null;
        }

        BalanceInputs thinned = ThinnedInputs.Of(inputs, BalanceFit.JoinedSteps(inputs.StepHours));
        double[] modelled = new double[thinned.Steps];
        var run = new Vector256<double>[thinned.Steps];
        BalanceRun.Run([fit.Parameters()], BalanceDrivers.ForRun(thinned, fit.Terms), true, run);
        BalanceRun.Of(run, 0, modelled);
        return HeldOutScore.Of(thinned, modelled, heldOut);
    }
}
