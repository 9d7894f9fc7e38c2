using ClimateLens.Science.Canopy;
using ClimateLens.Science.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Tests.Canopy;

/// <summary>The fit is the minimum of the stated sum of squares and its covariance the inverse of that sum's slopes, both worked out here from the docstring.</summary>
public class GrowthFitMinimumTests
{
    private static readonly GrowthPrior[] Priors = [.. GrowthPrior.All, GrowthPrior.AnyPotCrop];

    public static TheoryData<string, int> Crops
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (GrowthPrior prior in Priors)
            {
                data.Add(prior.Crop, 0); // by the prior's own curve
                data.Add(prior.Crop, 1); // far from it: wide and quick
                data.Add(prior.Crop, 2); // far from it: small and slow
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Crops))]
    public void Of_Widths_IsTheMinimum(string crop, int kind)
    {
        (GrowthPrior prior, PlantWidth[] widths, GrowthFit fit, double[] theta) = Fitted(crop, kind);
        double[] errors = [.. Enumerable.Range(0, 3).Select(j => Math.Sqrt(fit.Covariance[j, j]))];
        double least = Squares(prior, widths, theta);
        for (int j = 0; j < 3; j++)
        {
            // At a minimum a thousandth of a standard error to either side costs the same to first order.
            double up = Squares(prior, widths, Moved(theta, j, 1e-3 * errors[j])), down = Squares(prior, widths, Moved(theta, j, -1e-3 * errors[j]));
            Assert.True(up >= least - 1e-9 && down >= least - 1e-9, $"{crop} {kind} {j}: {down} {least} {up}");
            Assert.Equal(0, (up - down) / 2e-3, 1e-4);
        }
    }

    [Theory]
    [MemberData(nameof(Crops))]
    public void Covariance_IsTheInverseOfTheSlopes(string crop, int kind)
    {
        (GrowthPrior prior, PlantWidth[] widths, GrowthFit fit, double[] theta) = Fitted(crop, kind);
        Matrix<double> slopes = Matrix<double>.Build.Dense(widths.Length + 3, 3);
        for (int j = 0; j < 3; j++)
        {
            Vector<double> up = Residuals(prior, widths, Moved(theta, j, 1e-5)), down = Residuals(prior, widths, Moved(theta, j, -1e-5));
            slopes.SetColumn(j, (up - down) / 2e-5);
        }

        Matrix<double> one = slopes.Transpose() * slopes * fit.Covariance;
        Assert.True((one - Matrix<double>.Build.DenseIdentity(3)).Enumerate().All(v => Math.Abs(v) < 1e-4), $"{one}");
    }

    [Fact]
    public void ResidualCm_IsTheRootMeanSquareOfMeasuredLessFitted()
    {
        PlantWidth[] widths = Widths(GrowthPrior.Poinsettia, 1);
        GrowthFit fit = GrowthFit.Of(GrowthPrior.Poinsettia, widths);
        double squares = 0;
        foreach (PlantWidth width in widths)
        {
            double fitted = fit.Growth.LargestCm / (1 + Math.Exp(-fit.Growth.RatePerDay * (width.Day - fit.Growth.HalfwayDay)));
            squares += (width.DiameterCm - fitted) * (width.DiameterCm - fitted);
        }

        Assert.Equal(Math.Sqrt(squares / widths.Length), fit.ResidualCm, 9);
        Assert.True(fit.ResidualCm > 0.1, $"{fit.ResidualCm}"); // the widths scatter, so there is something to tell
        Assert.Equal(widths.Length, fit.Widths);
    }

    private static (GrowthPrior Prior, PlantWidth[] Widths, GrowthFit Fit, double[] Theta) Fitted(string crop, int kind)
    {
        GrowthPrior prior = Priors.Single(p => p.Crop == crop);
        PlantWidth[] widths = Widths(prior, kind);
        GrowthFit fit = GrowthFit.Of(prior, widths);
        return (prior, widths, fit, [Math.Log(fit.Growth.LargestCm), Math.Log(fit.Growth.RatePerDay), fit.Growth.HalfwayDay]);
    }

    /// <summary>The sum that the docstring states: widths in their errors, 3 % of the width added, and the prior as three observations more.</summary>
    private static double Squares(GrowthPrior prior, PlantWidth[] widths, double[] theta) => Residuals(prior, widths, theta).Sum(r => r * r);

    private static Vector<double> Residuals(GrowthPrior prior, PlantWidth[] widths, double[] theta) => Vector<double>.Build.DenseOfArray(
    [
        .. widths.Select(w => ((Math.Exp(theta[0]) / (1 + Math.Exp(-Math.Exp(theta[1]) * (w.Day - theta[2])))) - w.DiameterCm)
            / Math.Sqrt((w.ErrorCm * w.ErrorCm) + Math.Pow(0.03 * w.DiameterCm, 2))),
        (theta[0] - Math.Log(prior.Growth.LargestCm)) / prior.LargestError,
        (theta[1] - Math.Log(prior.Growth.RatePerDay)) / prior.RateError,
        (theta[2] - prior.Growth.HalfwayDay) / prior.HalfwayErrorDays,
    ]);

    private static double[] Moved(double[] theta, int which, double by) => [.. theta.Select((t, j) => j == which ? t + by : t)];

    private static PlantWidth[] Widths(GrowthPrior prior, int kind)
    {
        DiameterGrowth truth = kind switch
        {
            0 => prior.Growth,
            1 => new(110, 0.6, 12),
            _ => new(9, 0.03, 90),
        };
        var random = new SeededRandom((ulong)kind + 4);
        return [.. new[] { 7.0, 14, 30, 45, 60 }.Select(day => new PlantWidth(day, Math.Max(0.2, truth.DiameterCm(day) + random.NextNormal()), 0.2 + (0.03 * day)))];
    }
}
