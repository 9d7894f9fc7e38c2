using ClimateLens.Science.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Statistics;

public class QuantilesTests
{
    [Theory]
    [InlineData(0.25, 25.5)]
    [InlineData(0.5, 40)]
    [InlineData(0.75, 42.5)]
    [InlineData(0, 6)]
    [InlineData(1, 49)]
    public void Of_ElevenNumbers_GivesThePublishedQuartiles(double p, double expected) =>
        // The quartile example of many textbooks; values for linear interpolation seen in the documentation of a database's quantile
        // function, and by hand: rank 2.5 lies between 15 and 36.
        Assert.Equal(expected, Quantiles.Of([6, 7, 15, 36, 39, 40, 41, 42, 43, 47, 49], p), 12);

    [Theory]
    [InlineData(0.1, 1.3)]
    [InlineData(0.9, 3.7)]
    public void Of_OneToFour_InterpolatesByHand(double p, double expected) =>
        // h = 3p: 0.3 of the way from 1 to 2, 0.7 of the way from 3 to 4.
        Assert.Equal(expected, Quantiles.Of([1, 2, 3, 4], p), 12);

    [Fact]
    public void Of_OneValue_IsThatValue() => Assert.Equal(5, Quantiles.Of([5], 0.37));

    [Fact]
    public void Of_NoValue_IsNotKnown() => Assert.True(double.IsNaN(Quantiles.Of([], 0.5)));

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Of_ImpossibleShare_IsRefused(double p) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.Of([1, 2], p));

    [Fact]
    public void Of_AnySample_RisesWithTheShareAndStaysInside() =>
        Gen.Select(Gen.Double[-100, 100].Array[1, 30], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((sample, p, q) =>
        {
            Array.Sort(sample);
            double low = Quantiles.Of(sample, Math.Min(p, q)), high = Quantiles.Of(sample, Math.Max(p, q));
            return low <= high + 1e-12 && low >= sample[0] && high <= sample[^1] + 1e-12;
        });
}
