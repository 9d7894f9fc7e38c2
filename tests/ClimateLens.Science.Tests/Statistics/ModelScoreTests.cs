using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Statistics;

public class ModelScoreTests
{
    // Bland and Altman 1986, table 1 (seen in public tests): bias -2.11764705882, standard deviation of the differences 38.7651298736.
    private static readonly double[] First = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
    private static readonly double[] Second = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];

    [Fact]
    public void Of_PublishedPairs_HasThePublishedBiasAndSpread()
    {
        ModelScore score = ModelScore.Of(First, Second);
        Assert.Equal(17, score.Count);
        Assert.Equal(-2.11764705882, score.Bias.Value, 9);
        double spread = Math.Sqrt(((score.Rmse * score.Rmse) - (score.Bias.Value * score.Bias.Value)) * 17 / 16);
        Assert.Equal(38.7651298736, spread, 9);
    }

    [Fact]
    public void Of_UnrelatedDifferences_HasStudentsRange()
    {
        // -1, 1, -1, 1 … around 2: related negatively, so all count. t(0.95, 9 degrees) = 1.833 (any table of Student's t).
        double[] measured = [.. Enumerable.Range(0, 10).Select(i => 2 + ((i % 2 * 2) - 1.0))];
        ModelScore score = ModelScore.Of(measured, new double[10]);
        Assert.Equal((2, 10), (score.Bias.Value, score.EffectiveCount));
        Assert.Equal(1.833 / 3, score.Bias.High - 2, 0.001); // standard error of the mean: 1/√9
        Assert.Equal(score.Bias.High - 2, 2 - score.Bias.Low, 12);
    }

    [Fact]
    public void Of_UnknownSteps_AreLeftOut()
    {
        ModelScore score = ModelScore.Of([1, double.NaN, 3], [0, 5, double.NaN]);
        Assert.Equal((1, 1, 1), (score.Count, score.Rmse, score.MeanAbsolute));
        Assert.True(double.IsNaN(score.Bias.Low));
        Assert.True(double.IsNaN(ModelScore.Of([double.NaN], [1]).Rmse));
    }
}
