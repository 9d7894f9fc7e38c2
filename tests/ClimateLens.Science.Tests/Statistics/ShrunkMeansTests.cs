using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Statistics;

public class ShrunkMeansTests
{
    // Log risk ratios of 13 vaccine trials and their variances as the R package metafor prints them (dat.bcg), from memory;
    // so are its results by DerSimonian and Laird: variance between trials 0.3088, mean -0.7141, standard error 0.1787.
    private static readonly double[] Means = [-0.8893, -1.5854, -1.3481, -1.4416, -0.2175, -0.7861, -1.6209, 0.0120, -0.4694, -1.3713, -0.3394, 0.4459, -0.0173];
    private static readonly double[] Variances = [0.3256, 0.1946, 0.4154, 0.0200, 0.0512, 0.0069, 0.2230, 0.0040, 0.0564, 0.0730, 0.0124, 0.5325, 0.0714];

    [Fact]
    public void Of_VaccineTrials_IsThePrintedResult()
    {
        ShrunkMeans found = ShrunkMeans.Of(Means, Variances);
        Assert.Equal(0.3088, found.BetweenVariance, 0.001);
        Assert.Equal(-0.7141, found.Mean, 0.0005);
        Assert.Equal(0.1787, Math.Sqrt(found.MeanVariance), 0.0003);
    }

    [Fact]
    public void Groups_LieBetweenTheirOwnMeanAndTheMeanOfAll()
    {
        ShrunkMeans found = ShrunkMeans.Of(Means, Variances);
        for (int i = 0; i < Means.Length; i++)
        {
            Assert.InRange(found.Groups[i].Mean, Math.Min(Means[i], found.Mean), Math.Max(Means[i], found.Mean));
        }

        Assert.True(Math.Abs(found.Groups[11].Mean - Means[11]) > Math.Abs(found.Groups[7].Mean - Means[7])); // the less sure one moves further
    }

    [Fact]
    public void Of_GroupWithoutAMean_GetsTheMeanOfAll_AndNoneIsNotKnown()
    {
        ShrunkMeans found = ShrunkMeans.Of([1, double.NaN, 3], [0.1, 0.1, 0.1]);
        Assert.Equal(2, found.Groups[1].Mean, 9);
        Assert.Equal(found.BetweenVariance + found.MeanVariance, found.Groups[1].Variance, 9);
        Assert.True(double.IsNaN(ShrunkMeans.Of([double.NaN], [1]).Mean));
    }

    [Fact]
    public void Of_AlikeGroups_AreAllTheMean()
    {
        ShrunkMeans found = ShrunkMeans.Of([1, 1.01, 0.99], [1, 1, 1]);
        Assert.Equal(0, found.BetweenVariance);
        Assert.All(found.Groups, g => Assert.Equal(1, g.Mean, 9));
    }
}
