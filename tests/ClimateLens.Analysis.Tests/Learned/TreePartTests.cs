using ClimateLens.Analysis.Learned;
using ClimateLens.Science.Statistics;
using Microsoft.ML;
using Microsoft.ML.Data;

namespace ClimateLens.Analysis.Tests.Learned;

public sealed class TreePartTests
{
    private static readonly double[][] Rows = Made();
    private static readonly double[] Steps = [.. Rows.Select(row => (row[0] > 0.4 ? 3.0 : 0) + (row[1] > 0 && row[0] < -0.2 ? -2.0 : 0))];

    [Fact]
    public void Steps_AreLearned_WhichNoPlaneCan()
    {
        TreePart trees = TreePart.Fit(Rows, Steps);
        double left = Rows.Select((row, i) => Math.Pow(Steps[i] - trees.Predict(row), 2)).Average();
        LinearPart plane = LinearPart.Fit(Rows, Steps);
        double leftByPlane = Rows.Select((row, i) => Math.Pow(Steps[i] - plane.Predict(row), 2)).Average();
        Assert.True(left < 0.1 * leftByPlane, $"{left} by trees, {leftByPlane} by a plane");
    }

    [Fact]
    public void TreesWalkedHere_GiveWhatMicrosoftMlGives()
    {
        double unit = Math.Sqrt(Steps.Average(s => s * s));
        MLContext context = new(20250901);
        SchemaDefinition schema = SchemaDefinition.Create(typeof(Example));
        schema["Features"].ColumnType = new VectorDataViewType(NumberDataViewType.Single, 3);
        IDataView data = context.Data.LoadFromEnumerable(Rows.Select((row, i) => new Example { Features = [.. row.Select(x => (float)x)], Label = (float)(Steps[i] / unit) }), schema);
        float[] theirs = [.. context.Regression.Trainers.FastTree(TreePart.Options).Fit(data).Transform(data).GetColumn<float>("Score")];
        TreePart ours = TreePart.Fit(Rows, Steps);
        for (int i = 0; i < Rows.Length; i++)
        {
            Assert.Equal(unit * theirs[i], ours.Predict(Rows[i]), 1e-5);
        }
    }

    [Fact]
    public void SameRows_SameTrees_ToTheLastBit()
    {
        TreePart first = TreePart.Fit(Rows, Steps), second = TreePart.Fit(Rows, Steps);
        Assert.All(Rows, row => Assert.Equal(BitConverter.DoubleToInt64Bits(first.Predict(row)), BitConverter.DoubleToInt64Bits(second.Predict(row))));
    }

    [Fact]
    public void NothingLeftOver_NoTrees() => Assert.Equal(0, TreePart.Fit(Rows, new double[Rows.Length]).Predict(Rows[0]));

    private static double[][] Made()
    {
        SeededRandom random = new(7);
        return [.. Enumerable.Range(0, 600).Select(_ => new[] { random.NextNormal(), random.NextNormal(), random.NextNormal() })];
    }

    private sealed class Example
    {
        public float[] Features { get; init; } = [];

        public float Label { get; init; }
    }
}
