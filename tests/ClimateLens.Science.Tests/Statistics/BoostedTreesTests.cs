using ClimateLens.Science.Statistics;
using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers.FastTree;

namespace ClimateLens.Science.Tests.Statistics;

public sealed class BoostedTreesTests
{
    private static readonly double[][] Rows = Made(600, x => x);
    private static readonly double[] Steps = [.. Rows.Select(row => (row[0] > 0.4 ? 3.0 : 0) + (row[1] > 0 && row[0] < -0.2 ? -2.0 : 0))];

    /// <summary>Source: Microsoft.ML 5.0.1, FastTree regression. Inputs of fewer values than bins, so that both may cut between any two of them.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    public void InputsOfFewValues_TheTreesOfMicrosoftMl(double noise)
    {
        double[][] rows = Made(600, x => Math.Round(4 * Math.Clamp(x, -2, 2)) / 4);
        SeededRandom random = new(11);
        double[] targets = [.. rows.Select(row => Math.Sin(3 * row[0]) + (row[1] > 0 && row[0] < -0.2 ? -2.0 : 0) + (noise * random.NextNormal()))];
        double[] theirs = ByMicrosoftMl(rows, targets);
        var ours = BoostedTrees.Fit(rows, targets);
        for (int i = 0; i < rows.Length; i++)
        {
            Assert.Equal(theirs[i], ours.Predict(rows[i]), 1e-5);
        }
    }

    /// <summary>Source: the same. Inputs of many values, which each cuts into bins in its own way: as good on rows not learned from, within a tenth of the spread left.</summary>
    [Fact]
    public void InputsOfManyValues_AsGoodAsMicrosoftMl()
    {
        double[][] rows = Made(1200, x => x);
        SeededRandom random = new(12);
        double[] truth = [.. rows.Select(row => (2 * Math.Tanh(2 * row[0])) + (row[1] > 0.3 ? 1.5 : 0) + (row[0] * row[2]))];
        double[] targets = [.. truth.Select(t => t + (0.5 * random.NextNormal()))];
        double[] theirs = ByMicrosoftMl(rows[..600], targets[..600], rows[600..]);
        var trees = BoostedTrees.Fit(rows[..600], targets[..600]);
        double ours = Rms(rows[600..].Select((row, i) => trees.Predict(row) - truth[600 + i])), other = Rms(theirs.Select((t, i) => t - truth[600 + i]));
        Assert.InRange(ours, 0.9 * other, 1.1 * other);
    }

    [Fact]
    public void Steps_AreLearned_WhichNoPlaneCan()
    {
        var trees = BoostedTrees.Fit(Rows, Steps);
        double left = Rms(Rows.Select((row, i) => Steps[i] - trees.Predict(row))), spread = Rms(Steps.Select(s => s - Steps.Average()));
        Assert.True(left < 0.2 * spread, $"{left} of {spread}");
    }

    [Fact]
    public void SameRows_SameTrees_ToTheLastBit()
    {
        BoostedTrees first = BoostedTrees.Fit(Rows, Steps), second = BoostedTrees.Fit(Rows, Steps);
        Assert.All(Rows, row => Assert.Equal(BitConverter.DoubleToInt64Bits(first.Predict(row)), BitConverter.DoubleToInt64Bits(second.Predict(row))));
    }

    [Fact]
    public void NothingLeftOver_TreesSayNothing() => Assert.Equal(0, BoostedTrees.Fit(Rows, new double[Rows.Length]).Predict(Rows[0]));

    [Fact]
    public void OneValueOnly_ItsPartOfTheMean()
    {
        double[][] same = [.. Rows.Select(_ => Rows[0])];
        double said = BoostedTrees.Fit(same, [.. same.Select(_ => 5.0)]).Predict(same[0]);
        Assert.Equal(5 * (1 - Math.Pow(1 - BoostedTrees.Shrinkage, BoostedTrees.Trees)), said, 1e-12);
    }

    [Fact]
    public void FewerRowsThanTwoLeavesNeed_NoThreshold()
    {
        var trees = BoostedTrees.Fit(Rows[..19], Steps[..19]);
        Assert.All(Rows, row => Assert.Equal(trees.Predict(Rows[0]), trees.Predict(row)));
    }

    [Fact]
    public void NoRows_Refused() => Assert.Throws<ArgumentException>(() => BoostedTrees.Fit([], []));

    private static double Rms(IEnumerable<double> values) => Math.Sqrt(values.Average(v => v * v));

    private static double[] ByMicrosoftMl(double[][] rows, double[] targets, double[][]? asked = null)
    {
        MLContext context = new(1);
        SchemaDefinition schema = SchemaDefinition.Create(typeof(Example));
        schema[nameof(Example.Features)].ColumnType = new VectorDataViewType(NumberDataViewType.Single, 3);
        IDataView Table(double[][] of) => context.Data.LoadFromEnumerable(of.Select((row, i) => new Example { Features = [.. row.Select(x => (float)x)], Label = (float)targets[i] }), schema);
        FastTreeRegressionTrainer.Options options = new()
        {
            NumberOfThreads = 1,
            NumberOfTrees = BoostedTrees.Trees,
            NumberOfLeaves = BoostedTrees.Leaves,
            LearningRate = BoostedTrees.Shrinkage,
            MinimumExampleCountPerLeaf = BoostedTrees.FewestInALeaf,
            MaximumBinCountPerFeature = BoostedTrees.Bins,
        };
        return [.. context.Regression.Trainers.FastTree(options).Fit(Table(rows)).Transform(Table(asked ?? rows)).GetColumn<float>("Score").Select(s => (double)s)];
    }

    private static double[][] Made(int count, Func<double, double> of)
    {
        SeededRandom random = new(7);
        return [.. Enumerable.Range(0, count).Select(_ => new[] { of(random.NextNormal()), of(random.NextNormal()), of(random.NextNormal()) })];
    }

    private sealed class Example
    {
        public float[] Features { get; init; } = [];

        public float Label { get; init; }
    }
}
