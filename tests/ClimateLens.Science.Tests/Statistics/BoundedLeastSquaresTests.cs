using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Statistics;

public class BoundedLeastSquaresTests
{
    // [STRD], Misra1a: y = b1 (1 - exp(-b2 x)). Data and certified values from memory; the certified sum of squares confirms them.
    private static readonly double[] X = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
    private static readonly double[] Y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];

    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void Minimise_ReferenceData_FindsTheCertifiedParameters(double b1, double b2)
    {
        var squares = new BoundedLeastSquares(Each(Misra), X.Length, [1, 1e-6], [1000, 0.01]);
        double[] found = squares.Minimise([b1, b2]);
        const double B1 = 238.94212918, B2 = 5.5015643181e-4, Error1 = 2.7070075241, Error2 = 7.2668688436e-6, Sum = 0.12455138894;
        Assert.Equal(B1, found[0], 0.02 * Error1);
        Assert.Equal(B2, found[1], 0.02 * Error2);
        double[] misses = new double[X.Length];
        Misra(found, misses);
        double sum = misses.Sum(m => m * m);
        Assert.Equal(Sum, sum, 1e-4 * Sum);
        var covariance = squares.NormalAt(found).Inverse() * (sum / 12);
        Assert.Equal(Error1, Math.Sqrt(covariance[0, 0]), 0.01 * Error1);
        Assert.Equal(Error2, Math.Sqrt(covariance[1, 1]), 0.01 * Error2);
    }

    [Fact]
    public void Minimise_LeastPointOutOfBounds_StopsAtTheBound()
    {
        // Rosenbrock's valley has its lowest point at (1, 1); with x up to 0.5 it is at (0.5, 0.25).
        var squares = new BoundedLeastSquares(Each(Valley), 2, [-2, -2], [0.5, 2]);
        double[] found = squares.Minimise([-1.2, 1]);
        Assert.Equal(0.5, found[0]);
        Assert.Equal(0.25, found[1], 1e-4);
    }

    [Fact]
    public void Minimise_StartOutOfBounds_IsMovedIn()
    {
        double[] found = new BoundedLeastSquares(Each(Valley), 2, [-2, -2], [2, 2]).Minimise([50, -50]);
        Assert.Equal(1, found[0], 0.01);
        Assert.Equal(1, found[1], 0.02);
    }

    [Fact]
    public void Minimise_ParameterThatDoesNothing_StaysWhereItWas()
    {
        static void Residuals(ReadOnlySpan<double> p, Span<double> r) => r[0] = p[0] - 3;
        Assert.Equal([3, 0.7], new BoundedLeastSquares(Each(Residuals), 1, [0, 0], [10, 1]).Minimise([1, 0.7]).Select(v => Math.Round(v, 4)));
    }

    private delegate void OneSet(ReadOnlySpan<double> parameters, Span<double> result);

    private static BoundedLeastSquares.Residuals Each(OneSet residuals) => (sets, results) =>
    {
        for (int set = 0; set < sets.Length; set++)
        {
            residuals(sets[set], results[set]);
        }
    };

    private static void Misra(ReadOnlySpan<double> b, Span<double> result)
    {
        for (int i = 0; i < X.Length; i++)
        {
            result[i] = (b[0] * (1 - Math.Exp(-b[1] * X[i]))) - Y[i];
        }
    }

    private static void Valley(ReadOnlySpan<double> p, Span<double> result) =>
        (result[0], result[1]) = (10 * (p[1] - (p[0] * p[0])), 1 - p[0]);
}
