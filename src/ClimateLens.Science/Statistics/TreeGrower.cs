namespace ClimateLens.Science.Statistics;

/// <summary>Grows trees on the same rows, one on what the other leaves over.</summary>
/// <param name="inputs">Inputs in bins.</param>
/// <param name="left">What is left over in each row; each tree takes its part away. [unit of the targets]</param>
/// <param name="leaves">Leaves at most.</param>
/// <param name="fewest">Rows of a leaf at least.</param>
/// <param name="shrinkage">Part of a tree that is taken. [1]</param>
internal sealed class TreeGrower(BinnedInputs[] inputs, double[] left, int leaves, int fewest, double shrinkage)
{
    private readonly int[] _rows = [.. Enumerable.Range(0, left.Length)];
    private readonly int[] _spare = new int[left.Length];
    private readonly double[] _sums = new double[256];
    private readonly int[] _counts = new int[256];

    /// <summary>Grows the next tree.</summary>
    public RegressionTree Grow()
    {
        List<Leaf> all = [BestSplit(new Leaf(0, left.Length))];
        List<(int Input, double Threshold, int Left, int Right)> nodes = [];
        while (all.Count < leaves)
        {
            int at = 0;
            for (int i = 1; i < all.Count; i++)
            {
                at = all[i].Gain > all[at].Gain ? i : at;
            }

            Leaf leaf = all[at];
            if (!(leaf.Gain > 0))
            {
                break;
            }

            int middle = Divide(leaf);
            int node = nodes.Count, right = all.Count;
            if (leaf.Parent >= 0)
            {
                nodes[leaf.Parent] = leaf.OnTheLeft ? nodes[leaf.Parent] with { Left = node } : nodes[leaf.Parent] with { Right = node };
            }

            nodes.Add((leaf.Input, inputs[leaf.Input].Edges[leaf.Bin], ~at, ~right));
            all[at] = BestSplit(new Leaf(leaf.From, middle) { Parent = node, OnTheLeft = true });
            all.Add(BestSplit(new Leaf(middle, leaf.To) { Parent = node }));
        }

        double[] values = [.. all.Select(Take)];
        return new RegressionTree([.. nodes.Select(n => n.Input)], [.. nodes.Select(n => n.Threshold)], [.. nodes.Select(n => n.Left)], [.. nodes.Select(n => n.Right)], values);
    }

    /// <summary>What a leaf says, taken away from its rows.</summary>
    private double Take(Leaf leaf)
    {
        double sum = 0;
        for (int i = leaf.From; i < leaf.To; i++)
        {
            sum += left[_rows[i]];
        }

        double value = shrinkage * sum / (leaf.To - leaf.From);
        for (int i = leaf.From; i < leaf.To; i++)
        {
            left[_rows[i]] -= value;
        }

        return value;
    }

    /// <summary>The split of a leaf that takes most squares away: of equal ones the first input, the lowest threshold.</summary>
    private Leaf BestSplit(Leaf leaf)
    {
        int count = leaf.To - leaf.From;
        double sum = 0, squares = 0;
        for (int i = leaf.From; i < leaf.To; i++)
        {
            double value = left[_rows[i]];
            sum += value;
            squares += value * value;
        }

        double least = 1e-12 * squares; // rounding is no gain
        for (int input = 0; input < inputs.Length; input++)
        {
            Count(inputs[input], leaf);
            double onTheLeft = 0;
            int counted = 0;
            for (int bin = 0; bin < inputs[input].Edges.Length; bin++)
            {
                onTheLeft += _sums[bin];
                counted += _counts[bin];
                if (_counts[bin] == 0 || counted < fewest || count - counted < fewest)
                {
                    continue;
                }

                double onTheRight = sum - onTheLeft;
                double gain = (onTheLeft * onTheLeft / counted) + (onTheRight * onTheRight / (count - counted)) - (sum * sum / count);
                if (gain > least && gain > leaf.Gain)
                {
                    leaf = leaf with { Gain = gain, Input = input, Bin = bin };
                }
            }
        }

        return leaf;
    }

    private void Count(BinnedInputs input, Leaf leaf)
    {
        int bins = input.Edges.Length + 1;
        Array.Clear(_sums, 0, bins);
        Array.Clear(_counts, 0, bins);
        byte[] bin = input.Bin;
        for (int i = leaf.From; i < leaf.To; i++)
        {
            int row = _rows[i];
            _sums[bin[row]] += left[row];
            _counts[bin[row]]++;
        }
    }

    /// <summary>Puts the rows of a leaf that go left before the others, each kind in its order; answers where the others begin.</summary>
    private int Divide(Leaf leaf)
    {
        byte[] bin = inputs[leaf.Input].Bin;
        int kept = leaf.From, put = 0;
        for (int i = leaf.From; i < leaf.To; i++)
        {
            int row = _rows[i];
            if (bin[row] <= leaf.Bin)
            {
                _rows[kept++] = row;
            }
            else
            {
                _spare[put++] = row;
            }
        }

        Array.Copy(_spare, 0, _rows, kept, put);
        return kept;
    }

    /// <summary>Rows of a leaf, as a stretch of the order, and the split that would serve it best.</summary>
    private readonly record struct Leaf(int From, int To)
    {
        public int Parent { get; init; } = -1;

        public bool OnTheLeft { get; init; }

        public double Gain { get; init; } = 0;

        public int Input { get; init; } = -1;

        public int Bin { get; init; } = -1;
    }
}
