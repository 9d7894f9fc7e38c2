namespace ClimateLens.Logs.Times;

/// <summary>
/// The cheapest readings of a file, one format for each row, by dynamic programming over the rows in both directions
/// (min-marginals of a chain; Viterbi 1967 for the one best path).
/// </summary>
internal sealed class StampPaths
{
    private readonly StampOrder _order;
    private readonly int[] _rows;
    private readonly StampSteps _steps;
    private readonly int _width;
    private readonly float[] _before;
    private readonly float[] _after;

    /// <summary>Walks forward over the rows.</summary>
    /// <param name="order">What the rows could mean.</param>
    /// <param name="rows">The rows that some format reads.</param>
    /// <param name="steps">What steps cost.</param>
    public StampPaths(StampOrder order, int[] rows, StampSteps steps)
    {
        _order = order;
        _rows = rows;
        _steps = steps;
        _width = rows.Length == 0 ? 0 : order.Meanings(rows[0]).Length;
        _before = new float[rows.Length * _width];
        _after = new float[_width];
        Walk();
    }

    /// <summary>Cost of the cheapest reading of all rows.</summary>
    public double Total { get; private set; }

    /// <summary>
    /// How much dearer the cheapest reading gets when a row is read by each format. To be asked for the last row first, then for each before it.
    /// </summary>
    public void Excess(int i, Span<float> worse)
    {
        if (i < _rows.Length - 1)
        {
            Back(i);
        }

        float least = float.PositiveInfinity;
        for (int f = 0; f < _width; f++)
        {
            worse[f] = _before[(i * _width) + f] + _after[f];
            least = Math.Min(least, worse[f]);
        }

        for (int f = 0; f < _width; f++)
        {
            worse[f] -= least;
        }
    }

    private void Walk()
    {
        Span<float> costs = stackalloc float[_width];
        for (int i = 0; i < _rows.Length; i++)
        {
            ReadOnlySpan<long> here = _order.Meanings(_rows[i]);
            float least = float.PositiveInfinity;
            for (int f = 0; f < _width; f++)
            {
                costs[f] = !StampOrder.IsRead(here[f]) ? float.PositiveInfinity
                    : i == 0 ? 0 : Cheapest(_order.Meanings(_rows[i - 1]), _before.AsSpan((i - 1) * _width, _width), here[f], ahead: false);
                least = Math.Min(least, costs[f]);
            }

            // Only differences matter; the common part goes into the total, so that long files lose no digits.
            Total += least;
            for (int f = 0; f < _width; f++)
            {
                _before[(i * _width) + f] = costs[f] - least;
            }
        }
    }

    private void Back(int i)
    {
        Span<float> costs = stackalloc float[_width];
        ReadOnlySpan<long> here = _order.Meanings(_rows[i]);
        ReadOnlySpan<long> next = _order.Meanings(_rows[i + 1]);
        float least = float.PositiveInfinity;
        for (int f = 0; f < _width; f++)
        {
            costs[f] = StampOrder.IsRead(here[f]) ? Cheapest(next, _after, here[f], ahead: true) : float.PositiveInfinity;
            least = Math.Min(least, costs[f]);
        }

        for (int f = 0; f < _width; f++)
        {
            _after[f] = costs[f] - least;
        }
    }

    private float Cheapest(ReadOnlySpan<long> others, ReadOnlySpan<float> costs, long here, bool ahead)
    {
        float least = float.PositiveInfinity;
        for (int f = 0; f < others.Length; f++)
        {
            if (StampOrder.IsRead(others[f]))
            {
                least = Math.Min(least, costs[f] + (ahead ? _steps.CostOf(here, others[f]) : _steps.CostOf(others[f], here)));
            }
        }

        return least;
    }
}
