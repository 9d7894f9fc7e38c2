using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Leaf;

/// <summary>A difference between two sensors as a sum of terms, fitted.</summary>
/// <param name="Coefficients">Coefficient of each term: lasting difference, closure, closure times sun over 500 W/m², <c>exp(-hours/4)</c> since watering.</param>
/// <param name="Covariance">Their covariance, 4 x 4.</param>
/// <param name="Count">Steps used.</param>
/// <param name="EffectiveCount">Unrelated steps that these are worth.</param>
/// <param name="Residual">Root mean square of what a step differs from the fit; NaN without steps.</param>
/// <remarks>
/// <para><b>Formula:</b> least squares of the steps and, as pseudo-observations, of what is believed before [GELMAN13];
/// covariance <c>(Σ w xxᵀ + P⁻¹)⁻¹</c> with <c>w = n_eff/(n s²)</c>: residuals hang together from step to step, so each counts for less.
/// Weights and residuals are brought up to date three times.</para>
/// </remarks>
public sealed record DifferenceFit(
    Vector<double> Coefficients, Matrix<double> Covariance, int Count, double EffectiveCount, double Residual)
{
    private const int Rounds = 3;

    internal static DifferenceFit Of(
        ReadOnlySpan<double> believed, ReadOnlySpan<double> believedError, double[][] terms, double[] differences, double firstResidual)
    {
        Matrix<double> normal = Matrix<double>.Build.Dense(believed.Length, believed.Length);
        Vector<double> sums = Vector<double>.Build.Dense(believed.Length);
        for (int step = 0; step < differences.Length; step++)
        {
            Add(normal, sums, terms[step], differences[step]);
        }

        Vector<double> prior = Vector<double>.Build.DenseOfArray(believed.ToArray());
        Vector<double> precision = Vector<double>.Build.DenseOfArray(believedError.ToArray()).Map(error => 1 / (error * error));
        double weight = 1 / (firstResidual * firstResidual);
        DifferenceFit fit = Solve(normal, sums, prior, precision, weight);
        double[] residuals = new double[differences.Length];
        for (int round = 0; round < Rounds && differences.Length > 0; round++)
        {
            double squares = 0;
            for (int step = 0; step < residuals.Length; step++)
            {
                residuals[step] = differences[step] - fit.Value(terms[step]);
                squares += residuals[step] * residuals[step];
            }

            double worth = Statistics.EffectiveCount.Of(residuals);
            double variance = Math.Max(squares / residuals.Length, 1e-12); // a perfect fit still needs a weight
            fit = Solve(normal, sums, prior, precision, worth / (residuals.Length * variance)) with
            {
                Count = residuals.Length, EffectiveCount = worth, Residual = Math.Sqrt(variance),
            };
        }

        return fit;
    }

    internal double Value(ReadOnlySpan<double> terms)
    {
        double sum = 0;
        for (int i = 0; i < terms.Length; i++)
        {
            sum += Coefficients[i] * terms[i];
        }

        return sum;
    }

    /// <summary>Standard error of the fitted difference, not of a single step.</summary>
    internal double Error(ReadOnlySpan<double> terms)
    {
        double sum = 0;
        for (int i = 0; i < terms.Length; i++)
        {
            for (int j = 0; j < terms.Length; j++)
            {
                sum += terms[i] * Covariance[i, j] * terms[j];
            }
        }

        return Math.Sqrt(sum);
    }

    private static DifferenceFit Solve(
        Matrix<double> normal, Vector<double> sums, Vector<double> prior, Vector<double> precision, double weight)
    {
        Matrix<double> covariance = ((normal * weight) + Matrix<double>.Build.DiagonalOfDiagonalVector(precision)).Inverse();
        return new(covariance * ((sums * weight) + precision.PointwiseMultiply(prior)), covariance, 0, 0, double.NaN);
    }

    private static void Add(Matrix<double> normal, Vector<double> sums, double[] terms, double difference)
    {
        for (int i = 0; i < terms.Length; i++)
        {
            sums[i] += terms[i] * difference;
            for (int j = 0; j < terms.Length; j++)
            {
                normal[i, j] += terms[i] * terms[j];
            }
        }
    }
}
