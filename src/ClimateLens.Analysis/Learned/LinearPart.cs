using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Analysis.Learned;

/// <summary>A plane through the rows: least squares with a small penalty on its slopes, so that inputs that say the same share the weight.</summary>
/// <remarks>
/// <para><b>Formula:</b> weights w minimise Σ (y - w·x - b)² + λ n w·w for inputs x of mean 0 and spread 1 and λ the penalty.</para>
/// <para><b>Source:</b> [HK70]; <see cref="Penalty"/> is a choice of this project.</para>
/// </remarks>
internal sealed class LinearPart
{
    /// <summary>Penalty on the slopes, a row. [1]</summary>
    public const double Penalty = 1e-3;

    private readonly double[] _weights;

    private LinearPart(double[] weights) => _weights = weights;

    /// <summary>Fits the plane.</summary>
    /// <param name="rows">Inputs, scaled, a row each; at least one row.</param>
    /// <param name="targets">What each row should give. [any unit]</param>
    /// <param name="penalty">Penalty on the slopes, a row. [1]</param>
    public static LinearPart Fit(double[][] rows, double[] targets, double penalty = Penalty)
    {
        int inputs = rows[0].Length, unknowns = inputs + 1;
        double[,] normal = new double[unknowns, unknowns];
        double[] right = new double[unknowns];
        for (int r = 0; r < rows.Length; r++)
        {
            for (int a = 0; a < unknowns; a++)
            {
                double x = a < inputs ? rows[r][a] : 1;
                right[a] += x * targets[r];
                for (int b = 0; b <= a; b++)
                {
                    normal[a, b] += x * (b < inputs ? rows[r][b] : 1);
                }
            }
        }

        for (int a = 0; a < unknowns; a++)
        {
            normal[a, a] += a < inputs ? penalty * rows.Length : 0;
            for (int b = a + 1; b < unknowns; b++)
            {
                normal[a, b] = normal[b, a];
            }
        }

        return new LinearPart([.. Matrix<double>.Build.DenseOfArray(normal).Cholesky().Solve(Vector<double>.Build.Dense(right))]);
    }

    /// <summary>What a row gives. [unit of the targets]</summary>
    public double Predict(ReadOnlySpan<double> row)
    {
        double sum = _weights[^1];
        for (int i = 0; i < row.Length; i++)
        {
            sum += _weights[i] * row[i];
        }

        return sum;
    }
}
