using ClimateLens.Analysis.Learned;

namespace ClimateLens.Analysis.Tests.Learned;

public sealed class LinearPartTests
{
    // F. J. Anscombe: Graphs in statistical analysis. Am. Stat. 27 (1973) 17-21, first of the four sets (from memory): mean of x 9,
    // variance of x 11 (by n - 1), y = 3.00 + 0.500 x.
    private static readonly double[] X = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
    private static readonly double[] Y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];

    [Fact]
    public void OneInput_IsTheLineOfTheTextbook_ButForThePenalty()
    {
        double spread = Math.Sqrt(10); // 11 by n - 1 is 10 by n
        LinearPart line = LinearPart.Fit([.. X.Select(x => new[] { (x - 9) / spread })], Y);

        // One input of mean 0 and spread 1: the penalty divides the slope by 1 + λ and leaves the middle (algebra).
        Assert.Equal(7.50, line.Predict([0]), 0.005);
        Assert.Equal(0.500 / (1 + LinearPart.Penalty), (line.Predict([1 / spread]) - line.Predict([0])), 0.0005);
    }

    [Fact]
    public void TwoEqualInputs_ShareTheWeight()
    {
        LinearPart plane = LinearPart.Fit([.. X.Select(x => new[] { (x - 9) / 3, (x - 9) / 3 })], Y);
        Assert.Equal(plane.Predict([1, 0]), plane.Predict([0, 1]), 9);
    }

    [Fact]
    public void InputThatNeverMoves_HasNoSay()
    {
        LinearPart flat = LinearPart.Fit([.. X.Select(_ => new double[1])], Y);
        Assert.Equal(7.50, flat.Predict([5.0]), 0.005);
    }

    [Fact]
    public void MissingInput_GivesNothing() => Assert.Equal(double.NaN, LinearPart.Fit([.. X.Select(x => new[] { x })], Y).Predict([double.NaN]));
}
