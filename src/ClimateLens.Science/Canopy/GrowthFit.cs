using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Canopy;

/// <summary>A crop's growth curve after its measured widths, and how sure it is.</summary>
/// <param name="Growth">Best curve.</param>
/// <param name="Covariance">Covariance of (ln largest width, ln rate, half-way day), 3 x 3.</param>
/// <param name="Widths">Widths used.</param>
/// <param name="ResidualCm">Root mean square of measured minus fitted widths; NaN without widths. [cm]</param>
/// <remarks>
/// <para><b>Formula:</b> least squares by Levenberg and Marquardt over measured widths and, as three pseudo-observations, the prior;
/// covariance <c>(Jᵀ W J)⁻¹</c>. The logarithms keep width and rate positive.</para>
/// <para><b>Source:</b> [MARQUARDT63] and [GELMAN13] for priors as observations, both from memory. <b>Error:</b> a logistic curve is no plant:
/// 3 % of the width is added to each measured width's error (choice of this project).</para>
/// </remarks>
public sealed record GrowthFit(DiameterGrowth Growth, Matrix<double> Covariance, int Widths, double ResidualCm)
{
    private const double ShapeError = 0.03;
    private const int MostRounds = 200;

    /// <summary>Updates a prior by measured widths.</summary>
    /// <param name="prior">What is believed before.</param>
    /// <param name="widths">Widths measured; none leaves the prior.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is impossible or not known.</exception>
    public static GrowthFit Of(GrowthPrior prior, IReadOnlyList<PlantWidth> widths)
    {
        prior.Growth.Checked();
        foreach (PlantWidth width in widths)
        {
            Guard.Finite(width.Day);
            Guard.Within(Guard.Finite(width.DiameterCm), 0.1, 500, "cm", nameof(widths));
            Guard.Within(Guard.Finite(width.ErrorCm), 0.01, 100, "cm", nameof(widths));
        }

        Vector<double> theta = Minimise(prior, widths);
        DiameterGrowth growth = Curve(theta);
        (_, Matrix<double> jacobian) = Residuals(prior, widths, theta);
        double squares = widths.Sum(w => Math.Pow(w.DiameterCm - growth.DiameterCm(w.Day), 2));
        return new(
            growth, (jacobian.Transpose() * jacobian).Inverse(), widths.Count,
            widths.Count == 0 ? double.NaN : Math.Sqrt(squares / widths.Count));
    }

    internal static DiameterGrowth Curve(Vector<double> theta) => new(Math.Exp(theta[0]), Math.Exp(theta[1]), theta[2]);

    internal Vector<double> Theta() => Start(Growth);

    private static Vector<double> Start(DiameterGrowth growth) =>
        Vector<double>.Build.DenseOfArray([Math.Log(growth.LargestCm), Math.Log(growth.RatePerDay), growth.HalfwayDay]);

    private static Vector<double> Minimise(GrowthPrior prior, IReadOnlyList<PlantWidth> widths)
    {
        Vector<double> theta = Start(prior.Growth);
        (Vector<double> residuals, Matrix<double> jacobian) = Residuals(prior, widths, theta);
        double damping = 1e-3;
        for (int round = 0; round < MostRounds && damping < 1e12; round++)
        {
            Matrix<double> normal = jacobian.Transpose() * jacobian;
            Matrix<double> damped = normal + Matrix<double>.Build.DiagonalOfDiagonalVector(normal.Diagonal() * damping);
            Vector<double> step = damped.Solve(jacobian.Transpose() * residuals);
            (Vector<double> tried, Matrix<double> triedJacobian) = Residuals(prior, widths, theta - step);
            if (!(tried * tried <= residuals * residuals))
            {
                damping *= 10;
                continue;
            }

            theta -= step;
            (residuals, jacobian) = (tried, triedJacobian);
            damping = Math.Max(damping / 10, 1e-12);
            if (step.PointwiseAbs().Maximum() < 1e-10)
            {
                break;
            }
        }

        return theta;
    }

    /// <summary>Residuals (model minus observed, in standard errors) of widths and prior, and their slopes.</summary>
    private static (Vector<double> Residuals, Matrix<double> Jacobian) Residuals(
        GrowthPrior prior, IReadOnlyList<PlantWidth> widths, Vector<double> theta)
    {
        DiameterGrowth growth = Curve(theta);
        Vector<double> believed = Start(prior.Growth);
        double[] errors = [prior.LargestError, prior.RateError, prior.HalfwayErrorDays];
        Vector<double> residuals = Vector<double>.Build.Dense(widths.Count + 3);
        Matrix<double> jacobian = Matrix<double>.Build.Dense(widths.Count + 3, 3);
        for (int i = 0; i < widths.Count; i++)
        {
            PlantWidth width = widths[i];
            double error = double.Hypot(width.ErrorCm, ShapeError * width.DiameterCm);
            double model = growth.DiameterCm(width.Day);
            double bend = model * (1 - (model / growth.LargestCm)); // d(diameter)/d(k (t - t50))
            residuals[i] = (model - width.DiameterCm) / error;
            jacobian[i, 0] = model / error;
            jacobian[i, 1] = bend * growth.RatePerDay * (width.Day - growth.HalfwayDay) / error;
            jacobian[i, 2] = -bend * growth.RatePerDay / error;
        }

        for (int j = 0; j < 3; j++)
        {
            residuals[widths.Count + j] = (theta[j] - believed[j]) / errors[j];
            jacobian[widths.Count + j, j] = 1 / errors[j];
        }

        return (residuals, jacobian);
    }
}
