namespace ClimateLens.Science.Statistics;

/// <summary>Small regression trees, each grown on what those before it leave over: thresholds, and whatever else is not straight.</summary>
/// <remarks>
/// <para><b>Source:</b> gradient boosting of least squares, [FRIEDMAN01]: each tree fits the residuals, and a part of what it says is taken
/// (shrinkage). Trees grow leaf by leaf, the split with the largest gain in squares first, over inputs cut into bins of equal counts.</para>
/// <para><b>Range:</b> it predicts no further than the targets it has seen. <b>Error:</b> by days held out, where it is used. No chance in it:
/// equal rows give equal trees.</para>
/// <para>Held to Microsoft.ML's FastTree in the tests. That trainer forces three full garbage collections a fit, which was a fifth of the
/// processor time of a house-week and stopped all other threads (docs/performance.md).</para>
/// </remarks>
public sealed class BoostedTrees
{
    /// <summary>Number of trees; choice of this project: few, since they learn from a few weeks.</summary>
    public const int Trees = 10;

    /// <summary>Leaves of a tree; choice of this project.</summary>
    public const int Leaves = 6;

    /// <summary>Rows that a leaf has at least; choice of this project.</summary>
    public const int FewestInALeaf = 10;

    /// <summary>Bins of an input; choice of this project.</summary>
    public const int Bins = 32;

    /// <summary>Part of a tree that is taken; choice of this project. [1]</summary>
    public const double Shrinkage = 0.3;

    private readonly RegressionTree[] _trees;

    private BoostedTrees(RegressionTree[] trees) => _trees = trees;

    /// <summary>Grows the trees.</summary>
    /// <param name="rows">Inputs, a row each, all with the same number of finite values. [any units]</param>
    /// <param name="targets">What each row should give. [any unit]</param>
    public static BoostedTrees Fit(double[][] rows, double[] targets)
    {
        if (rows.Length == 0 || rows.Length != targets.Length)
        {
            throw new ArgumentException("There must be rows, and a target for each.", nameof(rows));
        }

        BinnedInputs[] inputs = [.. Enumerable.Range(0, rows[0].Length).Select(input => BinnedInputs.Of([.. rows.Select(row => row[input])], Bins))];
        double[] left = [.. targets];
        var grower = new TreeGrower(inputs, left, Leaves, FewestInALeaf, Shrinkage);
        var trees = new RegressionTree[Trees];
        for (int n = 0; n < Trees; n++)
        {
            trees[n] = grower.Grow();
        }

        return new BoostedTrees(trees);
    }

    /// <summary>What a row gives; NaN in an input goes to the right of every threshold. [unit of the targets]</summary>
    public double Predict(ReadOnlySpan<double> row)
    {
        double sum = 0;
        foreach (RegressionTree tree in _trees)
        {
            sum += tree.Predict(row);
        }

        return sum;
    }
}
