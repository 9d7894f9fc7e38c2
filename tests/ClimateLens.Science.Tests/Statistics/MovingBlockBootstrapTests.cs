using ClimateLens.Science.Statistics;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Statistics;

public class MovingBlockBootstrapTests
{
    private const int Draws = 200_000;

    [Fact]
    public void Means_OfTheCheckSeries_HaveTheExactMeanAndVariance()
    {
        CheckRow mean = Row("mbb_expected_mean"), variance = Row("mbb_variance_of_mean");
        double[] means = new double[Draws];
        MovingBlockBootstrap.Means(
            StatisticsRowTests.Numbers(mean.Inputs.GetProperty("series")), (int)mean.Input("block_length"), new SeededRandom(1), means);
        double middle = means.Average(), spread = means.Average(m => (m - middle) * (m - middle));
        double error = Math.Sqrt(variance.Expected / Draws);
        Assert.True(Math.Abs(middle - mean.Expected) < 4 * error, FormattableString.Invariant($"{middle:R}, exact {mean.Expected}"));
        // Standard error of a variance about √(2/N) of it; these draws have short tails.
        Assert.True(
            Math.Abs(spread - variance.Expected) < 4 * variance.Expected * Math.Sqrt(2.0 / Draws), FormattableString.Invariant($"{spread:R}, exact {variance.Expected}"));
    }

    [Fact]
    public void Means_SameSeed_AreTheSame()
    {
        double[] first = new double[50], second = new double[50], other = new double[50];
        double[] series = [.. Enumerable.Range(0, 31).Select(i => (double)(i * i % 17))];
        MovingBlockBootstrap.Means(series, 4, new SeededRandom(7), first);
        MovingBlockBootstrap.Means(series, 4, new SeededRandom(7), second);
        MovingBlockBootstrap.Means(series, 4, new SeededRandom(8), other);
        Assert.Equal(first, second);
        Assert.NotEqual(first, other);
    }

    [Fact]
    public void Means_OneBlockOfAll_AreTheMean()
    {
        double[] means = new double[5];
        MovingBlockBootstrap.Means([1, 2, 6], 3, new SeededRandom(1), means);
        Assert.All(means, mean => Assert.Equal(3, mean));
    }

    [Fact]
    public void Means_AllocateNothing()
    {
        double[] series = new double[100], means = new double[1000];
        var random = new SeededRandom(1);
        MovingBlockBootstrap.Means(series, 5, random, means);
        long before = GC.GetAllocatedBytesForCurrentThread();
        MovingBlockBootstrap.Means(series, 5, random, means);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>What blocks are for: values that hang together have a wider range than the same values shuffled would.</summary>
    [Fact]
    public void MeanRange_OfRelatedValues_HoldsTheTruthMoreOftenThanSinglesDo()
    {
        int held = 0, heldBySingles = 0;
        for (ulong seed = 0; seed < 200; seed++)
        {
            double[] series = Related(200, 0.7, new SeededRandom(seed));
            Interval range = MovingBlockBootstrap.MeanRange(series, 400, seed);
            held += range.Low <= 0 && range.High >= 0 ? 1 : 0;
            double[] singles = new double[400];
            MovingBlockBootstrap.Means(series, 1, new SeededRandom(seed), singles);
            Interval narrow = Interval.OfDraws(series.Average(), singles);
            heldBySingles += narrow.Low <= 0 && narrow.High >= 0 ? 1 : 0;
        }

        // 90 % is aimed at; blocks of six are short for a correlation of 0.7, and the docstring's warning is for that.
        Assert.InRange(held, 140, 185);
        Assert.True(heldBySingles < held - 30, $"{heldBySingles} {held}");
    }

    [Fact]
    public void MeanRange_OfTooFewValues_HasNone()
    {
        Assert.True(double.IsNaN(MovingBlockBootstrap.MeanRange([], 20, 1).Value));
        Interval four = MovingBlockBootstrap.MeanRange([1, 2, 3, 4], 20, 1);
        Assert.Equal(2.5, four.Value);
        Assert.True(double.IsNaN(four.Low) && double.IsNaN(four.High));
    }

    [Fact]
    public void Means_ImpossibleInputs_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MovingBlockBootstrap.Means([1, 2], 3, new SeededRandom(1), new double[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MovingBlockBootstrap.Means([1, double.NaN], 1, new SeededRandom(1), new double[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MovingBlockBootstrap.BlockLength(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MovingBlockBootstrap.MeanRange([1], 19, 1));
    }

    private static CheckRow Row(string quantity) => CheckRow.Of("stats_checks").Single(row => row.Quantity == quantity);

    private static double[] Related(int count, double correlation, SeededRandom random)
    {
        double[] series = new double[count];
        double value = random.NextNormal();
        for (int i = 0; i < count; i++)
        {
            series[i] = value = (correlation * value) + (Math.Sqrt(1 - (correlation * correlation)) * random.NextNormal());
        }

        return series;
    }
}
