using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Statistics;

/// <summary>Nonlinear least squares within bounds.</summary>
/// <remarks>
/// <para><b>Formula:</b> Levenberg and Marquardt's damped steps over the parameters that are free: one that stands at a bound and would be pushed out of it is held there, and a
/// step is cut off at the bounds. Slopes by forward differences of a millionth of the range. Ends when a step moves no parameter by more than a millionth of its range or
/// lessens the sum by less than a hundred-thousandth of it, or after <see cref="MostRounds"/> rounds.</para>
/// <para><b>Source:</b> [MARQUARDT63], from memory; bounds by projection, [KELLEY99], from memory. <b>Range:</b> one minimum near the start: it finds a nearby one, not the least of all.</para>
/// <para>Given the same inputs it gives the same bits: no threads, no chance.</para>
/// </remarks>
internal sealed class BoundedLeastSquares(BoundedLeastSquares.Residuals residuals, int count, double[] low, double[] high)
{
    /// <summary>Most rounds of slopes and steps.</summary>
    public const int MostRounds = 60;

    private const double SlopeStep = 1e-6, LeastMove = 1e-6, LeastGain = 1e-5, MostDamping = 1e10;

    private readonly double[] _here = new double[count], _there = new double[count];
    private readonly double[][] _slopes = [.. low.Select(_ => new double[count])];

    /// <summary>Model less data, each in its standard error, for one or more sets of parameters.</summary>
    /// <param name="sets">Parameters of each set.</param>
    /// <param name="results">Receive the residuals of each.</param>
    public delegate void Residuals(ReadOnlySpan<double[]> sets, ReadOnlySpan<double[]> results);

    /// <summary>Finds the parameters that make the sum of squares least.</summary>
    /// <param name="start">Where to begin; moved into the bounds.</param>
    public double[] Minimise(ReadOnlySpan<double> start)
    {
        double[] at = Within(start.ToArray());
        double sum = SumOfSquares(at, _here), damping = 1e-3;
        for (int round = 0; round < MostRounds; round++)
        {
            (Matrix<double> normal, Vector<double> gradient) = Normal(at);
            bool[] free = Free(at, gradient);
            double[]? better = null;
            double betterSum = sum;
            for (; damping < MostDamping && better is null; damping *= 4)
            {
                double[] tried = Step(at, normal, gradient, free, damping);
                double triedSum = SumOfSquares(tried, _there);
                (better, betterSum) = triedSum < sum ? (tried, triedSum) : (null, sum);
            }

            if (better is null)
            {
                break;
            }

            bool done = sum - betterSum <= LeastGain * sum || Move(at, better) <= LeastMove;
            (at, sum, damping) = (better, betterSum, Math.Max(damping / 40, 1e-9));
            _there.CopyTo(_here, 0);
            if (done)
            {
                break;
            }
        }

        return at;
    }

    /// <summary>Sum over the residuals of products of slopes, at some parameters.</summary>
    /// <param name="at">Parameters.</param>
    public Matrix<double> NormalAt(double[] at)
    {
        residuals([at], [_here]);
        return Normal(at).Normal;
    }

    private double SumOfSquares(double[] at, double[] result)
    {
        residuals([at], [result]);
        double sum = 0;
        foreach (double residual in result)
        {
            sum += residual * residual;
        }

        return sum;
    }

    private (Matrix<double> Normal, Vector<double> Gradient) Normal(double[] at)
    {
        Matrix<double> normal = Matrix<double>.Build.Dense(at.Length, at.Length);
        Vector<double> gradient = Vector<double>.Build.Dense(at.Length);
        double[] steps = [.. at.Select((value, j) => SlopeStep * (high[j] - low[j]) * (value + (SlopeStep * (high[j] - low[j])) > high[j] ? -1 : 1))];
        residuals(Moved(at, steps), _slopes);
        for (int j = 0; j < at.Length; j++)
        {
            double[] slope = _slopes[j];
            for (int i = 0; i < slope.Length; i++)
            {
                slope[i] = (slope[i] - _here[i]) / steps[j];
            }

            gradient[j] = Product(slope, _here);
            for (int k = 0; k <= j; k++)
            {
                normal[j, k] = normal[k, j] = Product(slope, _slopes[k]);
            }
        }

        return (normal, gradient);
    }

    /// <summary>The parameters, one of them moved in each set.</summary>
    private static double[][] Moved(double[] at, double[] steps)
    {
        var sets = new double[at.Length][];
        for (int j = 0; j < sets.Length; j++)
        {
            sets[j] = [.. at];
            sets[j][j] += steps[j];
        }

        return sets;
    }

    private bool[] Free(double[] at, Vector<double> gradient) =>
        [.. at.Select((value, j) => !((value <= low[j] && gradient[j] > 0) || (value >= high[j] && gradient[j] < 0)))];

    private double[] Step(double[] at, Matrix<double> normal, Vector<double> gradient, bool[] free, double damping)
    {
        Matrix<double> damped = normal.Clone();
        Vector<double> right = -gradient;
        for (int j = 0; j < at.Length; j++)
        {
            damped[j, j] += (damping * normal[j, j]) + double.Epsilon;
            if (!free[j])
            {
                damped.ClearRow(j);
                damped.ClearColumn(j);
                damped[j, j] = 1;
                right[j] = 0;
            }
        }

        Vector<double> step = damped.Solve(right);
        return Within([.. at.Select((value, j) => value + step[j])]);
    }

    private double[] Within(double[] values)
    {
        for (int j = 0; j < values.Length; j++)
        {
            values[j] = double.IsNaN(values[j]) ? low[j] : Math.Clamp(values[j], low[j], high[j]);
        }

        return values;
    }

    private double Move(double[] from, double[] to)
    {
        double most = 0;
        for (int j = 0; j < from.Length; j++)
        {
            most = Math.Max(most, Math.Abs(to[j] - from[j]) / (high[j] - low[j]));
        }

        return most;
    }

    private static double Product(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
