using ClimateLens.Science.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Statistics;

public class RankCorrelationTests
{
    // Worked example of ci.spear in the documentation of the R package statpsych (seen): estimate 0.8699639, 95 % range 0.5840951 to 0.9638297.
    private static readonly double[] ExampleY = [21, 4, 9, 12, 35, 18, 10, 22, 24, 1, 6, 8, 13, 16, 19];
    private static readonly double[] ExampleX = [67, 28, 30, 28, 52, 40, 25, 37, 44, 10, 14, 20, 28, 40, 51];

    [Fact]
    public void Of_WorkedExampleWithTies_IsThePublishedRange()
    {
        RankCorrelation found = RankCorrelation.Of(ExampleY, ExampleX, 0.95, 1);
        Assert.Equal(0.8699639, found.Rho.Value, 7);
        Assert.Equal(0.5840951, found.Rho.Low, 7);
        Assert.Equal(0.9638297, found.Rho.High, 7);
        Assert.Equal(15, found.Pairs);
        Assert.True(found.ChanceShare < 0.001, $"{found.ChanceShare}");
    }

    [Fact]
    public void Of_TextbookRanks_IsThePublishedCoefficient() =>
        // Ten pairs of a question-and-answer page (seen) that quotes 0.684848.
        Assert.Equal(
            0.684848,
            RankCorrelation.Of([4, 10, 3, 1, 9, 2, 6, 7, 8, 5], [5, 8, 6, 2, 10, 3, 9, 4, 7, 1], 0.9, 1).Rho.Value, 6);

    [Fact]
    public void Chance_OfFourInOrder_IsTheCountedOne() =>
        // Of the 24 orders of four values two have a coefficient of ±1: 1/12.
        Assert.Equal(1 / 12.0, RankCorrelation.Of([1, 2, 3, 4], [5, 6, 7, 8], 0.9, 7).ChanceShare, 0.01);

    [Fact]
    public void Of_FewOrConstantValues_IsNotKnown()
    {
        Assert.True(double.IsNaN(RankCorrelation.Of([1, 2], [2, 1], 0.9, 1).Rho.Value));
        Assert.True(double.IsNaN(RankCorrelation.Of([1, 2, 3, 4], [5, 5, 5, 5], 0.9, 1).Rho.Value));
        RankCorrelation three = RankCorrelation.Of([1, 2, 3, double.NaN, 4], [2, 1, 3, 9, double.NaN], 0.9, 1);
        Assert.Equal((3, 0.5), (three.Pairs, three.Rho.Value));
        Assert.True(double.IsNaN(three.Rho.Low));
    }

    [Fact]
    public void Of_ColumnDoubledOrTurnedRound_KeepsOrTurnsTheSign() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-5, 5]).Array[4, 20].Sample(pairs =>
        {
            double[] x = [.. pairs.Select(p => p.Item1)], y = [.. pairs.Select(p => p.Item2)];
            RankCorrelation plain = RankCorrelation.Of(x, y, 0.9, 3);
            return plain == RankCorrelation.Of([.. x.Select(v => 2 * v)], y, 0.9, 3)
                && plain.Rho.Value is >= -1 and <= 1
                && Math.Abs(plain.Rho.Value + RankCorrelation.Of(x, [.. y.Select(v => -v)], 0.9, 3).Rho.Value) < 1e-12;
        }, iter: 50);

    [Fact]
    public void Range_OfUnrelatedColumns_HoldsZeroAboutAsOftenAsItSays()
    {
        var random = new SeededRandom(11);
        int held = 0;
        for (int trial = 0; trial < 400; trial++)
        {
            double[] x = [.. Enumerable.Range(0, 25).Select(_ => random.NextNormal())];
            double[] y = [.. Enumerable.Range(0, 25).Select(_ => random.NextNormal())];
            Interval range = RankCorrelation.Of(x, y, 0.9, 1).Rho;
            held += range.Low <= 0 && range.High >= 0 ? 1 : 0;
        }

        Assert.InRange(held / 400.0, 0.86, 0.95); // 0.9, and three standard errors of 400 trials
    }
}
