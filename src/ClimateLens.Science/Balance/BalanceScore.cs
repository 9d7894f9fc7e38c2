using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Balance;

/// <summary>How well a balance tells days that it was not fitted to.</summary>
/// <param name="HeldOutDays">Days held out that could be scored.</param>
/// <param name="Persistence">Against the humidity at the same time of the day before.</param>
/// <param name="DailyCurve">Against the mean of the other days at the same time of day.</param>
/// <param name="ResidualGm3">Measured minus modelled at each step of those days, NaN elsewhere, in steps of <see cref="StepHours"/>. [g/m³]</param>
/// <param name="StepHours">Length of such a step. [h]</param>
/// <remarks>
/// <para><b>Formula:</b> every n-th day is held out, the balance is fitted to the others and run free through each held-out day from its first reading, with the day's own weather, vents and waterings:
/// <c>skill = 1 - MSE/MSE_ref</c>. <b>Source:</b> [MURPHY88], from memory.</para>
/// <para><b>Error:</b> days of a house are alike and few: a skill is good to about a tenth with five held-out days (from memory). It knows the day's weather and is no forecast.</para>
/// </remarks>
public sealed record BalanceScore(
    int HeldOutDays, ForecastSkill Persistence, ForecastSkill DailyCurve, ReadOnlyMemory<double> ResidualGm3, double StepHours)
{
    /// <summary>Whether it beats both references. [1]</summary>
    public bool HasSkill => Persistence.Skill > 0 && DailyCurve.Skill > 0;

    /// <summary>Scores the balance; null where it cannot be fitted without the days held out, or none of them can be scored.</summary>
    /// <param name="inputs">The readings.</param>
    /// <param name="every">Every how manyth day is held out, 2 or more.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is impossible.</exception>
    public static BalanceScore? Of(BalanceInputs inputs, int every = 4)
    {
        Guard.Within(every, 2, 1000, "(days)");
        inputs.Check();
        int first = inputs.Steps == 0 ? 0 : inputs.Day.Span[0];
        bool IsHeldOut(int day) => (day - first) % every == every - 1;
        BalanceFit fit = BalanceFit.Of(inputs, day => !IsHeldOut(day));
        if (!fit.IsFitted)
        {
            return null;
        }

        BalanceInputs thinned = ThinnedInputs.Of(inputs, Math.Max(1, (int)Math.Round(BalanceFit.FitStepHours / inputs.StepHours)));
        double[] modelled = new double[thinned.Steps];
        BalanceRun.Run(fit.Parameters(), BalanceDrivers.ForRun(thinned, fit.Terms), true, modelled);
        DayCurve curve = new(thinned, IsHeldOut);
        return Scored(thinned, modelled, curve, IsHeldOut);
    }

    private static BalanceScore? Scored(BalanceInputs inputs, double[] modelled, DayCurve curve, Predicate<int> isHeldOut)
    {
        ReadOnlySpan<double> measured = inputs.HumidityGm3.Span;
        double[] truth = new double[inputs.Steps], residual = new double[inputs.Steps];
        HashSet<int> days = [];
        for (int i = 0; i < truth.Length; i++)
        {
            bool scored = isHeldOut(inputs.Day.Span[i]) && double.IsFinite(modelled[i]);
            truth[i] = scored ? measured[i] : double.NaN;
            residual[i] = truth[i] - modelled[i];
            if (!double.IsNaN(residual[i]))
            {
                days.Add(inputs.Day.Span[i]);
            }
        }

        return days.Count == 0 ? null : new(
            days.Count, ForecastSkill.Of(truth, modelled, curve.DayBefore), ForecastSkill.Of(truth, modelled, curve.Mean), residual, inputs.StepHours);
    }
}
