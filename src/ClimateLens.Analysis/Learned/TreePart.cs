using System.Diagnostics.CodeAnalysis;
using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers.FastTree;

namespace ClimateLens.Analysis.Learned;

/// <summary>Boosted trees of Microsoft.ML on what a plane leaves over: thresholds of vents and heating, and whatever else is not straight.</summary>
/// <remarks>
/// <para><b>Source:</b> gradient boosting, [FRIEDMAN01]; few and small trees, since they learn from a few weeks.</para>
/// <para>Trained on one thread from a fixed seed, so that equal rows give equal trees. The trees are walked here rather than through a
/// Microsoft.ML pipeline, which costs a hundred times as much a row.</para>
/// </remarks>
internal sealed class TreePart
{
    /// <summary>Number of trees.</summary>
    public const int Trees = 10;

    /// <summary>Leaves of a tree.</summary>
    public const int Leaves = 6;

    private const int Seed = 20250901, FewestInALeaf = 10, Bins = 32;
    private const double LearningRate = 0.3;

    private readonly Tree[] _trees;
    private readonly double _unit;

    private TreePart(Tree[] trees, double unit) => (_trees, _unit) = (trees, unit);

    /// <summary>Trains the trees.</summary>
    /// <param name="rows">Inputs, scaled, a row each.</param>
    /// <param name="targets">What each row should give. [any unit]</param>
    public static TreePart Fit(double[][] rows, double[] targets)
    {
        double unit = Math.Sqrt(targets.Sum(t => t * t) / targets.Length);
        if (!(unit > 0))
        {
            return new TreePart([], 1);
        }

        MLContext context = new(Seed);
        SchemaDefinition schema = SchemaDefinition.Create(typeof(Example));
        schema[nameof(Example.Features)].ColumnType = new VectorDataViewType(NumberDataViewType.Single, rows[0].Length);
        Example[] examples = [.. rows.Zip(targets, (row, target) => new Example { Features = [.. row.Select(x => (float)x)], Label = (float)(target / unit) })];
        RegressionTreeEnsemble ensemble = context.Regression.Trainers.FastTree(Options).Fit(context.Data.LoadFromEnumerable(examples, schema)).Model.TrainedTreeEnsemble;
        return new TreePart([.. ensemble.Trees.Zip(ensemble.TreeWeights, Tree.Of)], unit) { Bias = ensemble.Bias };
    }

    /// <summary>How trees are grown.</summary>
    internal static FastTreeRegressionTrainer.Options Options => new()
    {
        Seed = Seed,
        NumberOfThreads = 1,
        NumberOfTrees = Trees,
        NumberOfLeaves = Leaves,
        LearningRate = LearningRate,
        MinimumExampleCountPerLeaf = FewestInALeaf,
        MaximumBinCountPerFeature = Bins,
    };

    private double Bias { get; init; }

    /// <summary>What a row gives. [unit of the targets]</summary>
    public double Predict(ReadOnlySpan<double> row)
    {
        double sum = Bias;
        foreach (Tree tree in _trees)
        {
            sum += tree.Predict(row);
        }

        return _unit * sum;
    }

    /// <summary>A tree as plain arrays; children below 0 are leaves.</summary>
    private sealed record Tree(int[] Inputs, float[] Thresholds, int[] Left, int[] Right, double[] Leaves)
    {
        public static Tree Of(RegressionTree tree, double weight) => new(
            [.. tree.NumericalSplitFeatureIndexes], [.. tree.NumericalSplitThresholds], [.. tree.LeftChild], [.. tree.RightChild], [.. tree.LeafValues.Select(v => v * weight)]);

        public double Predict(ReadOnlySpan<double> row)
        {
            int node = Inputs.Length == 0 ? -1 : 0;
            while (node >= 0)
            {
                node = (float)row[Inputs[node]] <= Thresholds[node] ? Left[node] : Right[node];
            }

            return Leaves[~node];
        }
    }

    /// <summary>A row as Microsoft.ML reads it.</summary>
    [SuppressMessage("Performance", "CA1812:Avoid uninstantiated internal classes", Justification = "Read by reflection.")]
    private sealed class Example
    {
        public float[] Features { get; init; } = [];

        public float Label { get; init; }
    }
}
