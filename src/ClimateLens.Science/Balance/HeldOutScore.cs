using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Balance;

/// <summary>How well a model of the humidity of a house tells days that it was not fitted to.</summary>
/// <param name="HeldOutDays">Days held out that could be scored.</param>
/// <param name="Persistence">Against the humidity at the same time of the day before.</param>
/// <param name="DailyCurve">Against the mean of the other days at the same time of day.</param>
/// <param name="ResidualGm3">Measured minus modelled at each step of those days, NaN elsewhere, in steps of <see cref="StepHours"/>. [g/m³]</param>
/// <param name="StepHours">Length of such a step. [h]</param>
/// <remarks>
/// <para><b>Formula:</b> <c>skill = 1 - MSE/MSE_ref</c>. <b>Source:</b> [MURPHY88], from memory.</para>
/// <para><b>Error:</b> days of a house are alike and few: a skill is good to about a tenth with five held-out days (from memory). It knows the day's weather and is no forecast.</para>
/// </remarks>
public sealed record HeldOutScore(
    int HeldOutDays, ForecastSkill Persistence, ForecastSkill DailyCurve, ReadOnlyMemory<double> ResidualGm3, double StepHours)
{
    /// <summary>Whether it beats both references. [1]</summary>
    public bool HasSkill => Persistence.Skill > 0 && DailyCurve.Skill > 0;

    /// <summary>Scores a modelled humidity; null where no step of a day held out can be scored.</summary>
    /// <param name="inputs">The readings.</param>
    /// <param name="modelled">Humidity by the model at the end of each step; NaN for not known. [g/m³]</param>
    /// <param name="heldOut">The days that the model has not seen.</param>
    /// <exception cref="ArgumentException">The columns differ in length.</exception>
    public static HeldOutScore? Of(BalanceInputs inputs, ReadOnlySpan<double> modelled, HeldOutDays heldOut)
    {
        Guard.SameLength(inputs.Steps, modelled.Length);
        DayCurve curve = new(inputs, heldOut.Contains);
        ReadOnlySpan<double> measured = inputs.HumidityGm3.Span;
        double[] truth = new double[inputs.Steps], residual = new double[inputs.Steps];
        HashSet<int> days = [];
        for (int i = 0; i < truth.Length; i++)
        {
            bool scored = heldOut.Contains(inputs.Day.Span[i]) && double.IsFinite(modelled[i]);
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

    /// <summary>Mean square of the residuals of two models over the steps that both tell; NaN where there is none. [(g/m³)²]</summary>
    /// <param name="one">One model.</param>
    /// <param name="other">The other, of the same readings.</param>
    /// <exception cref="ArgumentException">They are not of the same readings.</exception>
    public static (double One, double Other) OnCommonSteps(HeldOutScore one, HeldOutScore other)
    {
        ReadOnlySpan<double> a = one.ResidualGm3.Span, b = other.ResidualGm3.Span;
        Guard.SameLength(a.Length, b.Length);
        double sumA = 0, sumB = 0;
        int common = 0;
        for (int i = 0; i < a.Length; i++)
        {
            bool both = double.IsFinite(a[i]) && double.IsFinite(b[i]);
            (sumA, sumB, common) = both ? (sumA + (a[i] * a[i]), sumB + (b[i] * b[i]), common + 1) : (sumA, sumB, common);
        }

        return (sumA / common, sumB / common);
    }
}
