using ClimateLens.Science.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Balance;

/// <summary>The vapour balance of a house, fitted to its own readings.</summary>
/// <param name="Problem">Why there is no fit; then all else is empty.</param>
/// <param name="Terms">What the logs let it know.</param>
/// <param name="Fitted">The parameters that were fitted; all others are 0 and do nothing.</param>
/// <param name="Covariance">Covariance of the fitted parameters in their order, 0 for those at a bound.</param>
/// <param name="Steps">Steps that were fitted.</param>
/// <param name="EffectiveCount">Unrelated steps that these are worth.</param>
/// <param name="ResidualGm3">Root mean square of measured minus modelled humidity, each day run free from its first reading. [g/m³]</param>
/// <param name="ResidualCorrelation">How far a step's residual hangs together with the one before, see <see cref="FitStepHours"/>. [1]</param>
/// <remarks>
/// <para><b>Formula:</b> the equation of <see cref="VapourState"/>; parameters by <see cref="BoundedLeastSquares"/> over free runs of a day, so that they are those that forecast a day and not a step.
/// Each typical value counts as one observation with as much again as error [GELMAN13], so that what the data do not tell stays where it may be.
/// Covariance <c>(Σ w JᵀJ + P⁻¹)⁻¹</c> with <c>w = n_eff/(n s²)</c> [BH46]: residuals hang together.</para>
/// <para><b>Source:</b> balance of a well-mixed house as in [BOT83], transpiration as in [BAILLE94], both from memory. <b>Range:</b> one well-mixed air volume; half a day of steady residuals is not in it.</para>
/// <para><b>Error:</b> of the parameters that of the covariance, if the equation is right, which it is not: two of them may share what is one, as leak and dew on the cover do. What the balance
/// is worth is its skill on days that it has not seen (<see cref="BalanceScore"/>). Known parameters come back within three standard errors in made-up houses (BalanceFitTests).</para>
/// </remarks>
public sealed record BalanceFit(
    BalanceProblem Problem, BalanceTerms Terms, IReadOnlyList<FittedTerm> Fitted, Matrix<double> Covariance, int Steps, double EffectiveCount,
    double ResidualGm3, double ResidualCorrelation)
{
    /// <summary>Fewest days to fit. A choice of this project. [d]</summary>
    public const int FewestDays = 5;

    /// <summary>Readings are thinned to steps of about this length for the fit. [h]</summary>
    public const double FitStepHours = 0.25;

    /// <summary>Whether there is a fit.</summary>
    public bool IsFitted => Problem == BalanceProblem.None;

    /// <summary>Fits the balance.</summary>
    /// <param name="inputs">The readings.</param>
    /// <param name="useDay">Which days to use, by <see cref="BalanceInputs.Day"/>; all when left out.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Step or height is impossible.</exception>
    public static BalanceFit Of(BalanceInputs inputs, Predicate<int>? useDay = null)
    {
        inputs.Check();
        BalanceInputs thinned = ThinnedInputs.Of(inputs, Math.Max(1, (int)Math.Round(FitStepHours / inputs.StepHours)));
        return new BalanceFitter(BalanceDrivers.ForFit(thinned), useDay ?? (_ => true)).Fit();
    }

    /// <summary>Value of every parameter, in the order of <see cref="BalanceTerm"/>; what is not fitted is 0 and, for a store, does nothing.</summary>
    public double[] Parameters() => BalanceFitter.Parameters(Fitted.Select(f => f.Info.Term), Fitted.Select(f => f.Value));

    /// <summary>Parameters as they could be too: one draw of their joint error, held within their bounds.</summary>
    /// <param name="random">Source of the draw.</param>
    public double[] Draw(SeededRandom random)
    {
        double[] normal = [.. Fitted.Select(_ => random.NextNormal())];
        Vector<double> moved = Root() * Vector<double>.Build.DenseOfArray(normal);
        return BalanceFitter.Parameters(
            Fitted.Select(f => f.Info.Term), Fitted.Select((f, i) => Math.Clamp(f.Value + moved[i], f.Info.Low, f.Info.High)));
    }

    internal static BalanceFit None(BalanceProblem problem, BalanceTerms terms) =>
        new(problem, terms, [], Matrix<double>.Build.Dense(1, 1), 0, 0, double.NaN, double.NaN);

    /// <summary>Lower root of the covariance; parameters at a bound do not move.</summary>
    private Matrix<double> Root()
    {
        Matrix<double> filled = Covariance.Clone();
        for (int i = 0; i < Fitted.Count; i++)
        {
            filled[i, i] += filled[i, i] == 0 ? 1 : 0;
        }

        Matrix<double> root = filled.Cholesky().Factor;
        for (int i = 0; i < Fitted.Count; i++)
        {
            if (Covariance[i, i] == 0)
            {
                root[i, i] = 0;
            }
        }

        return root;
    }
}
