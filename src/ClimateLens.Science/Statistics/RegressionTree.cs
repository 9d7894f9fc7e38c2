namespace ClimateLens.Science.Statistics;

/// <summary>A tree of thresholds as plain arrays, the root first; a child below 0 is the complement of a leaf's number.</summary>
/// <param name="Inputs">Input that a node looks at.</param>
/// <param name="Thresholds">Values up to this go left. [unit of the input]</param>
/// <param name="Left">Child on the left.</param>
/// <param name="Right">Child on the right.</param>
/// <param name="Leaves">What a leaf says. [unit of the targets]</param>
internal sealed record RegressionTree(int[] Inputs, double[] Thresholds, int[] Left, int[] Right, double[] Leaves)
{
    /// <summary>What a row gives. [unit of the targets]</summary>
    public double Predict(ReadOnlySpan<double> row)
    {
        int node = Inputs.Length == 0 ? -1 : 0;
        while (node >= 0)
        {
            node = row[Inputs[node]] <= Thresholds[node] ? Left[node] : Right[node];
        }

        return Leaves[~node];
    }
}
