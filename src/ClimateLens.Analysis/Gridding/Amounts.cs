namespace ClimateLens.Analysis.Gridding;

/// <summary>Lays amounts (litres, rain) on the grid so that their sum stays the same.</summary>
internal static class Amounts
{
    /// <summary>
    /// An amount of a source as fast as the grid falls into the step in which it begins. A slower one is spread evenly over
    /// its interval; a bare moment is taken for the end of that interval, as counters are read (common practice, no source).
    /// </summary>
    public static void Lay(GridSource source, double[] values, double[] grid)
    {
        Array.Fill(grid, double.NaN);
        for (int row = 0; row < values.Length; row++)
        {
            if (!double.IsFinite(values[row]))
            {
                continue;
            }

            if (!source.IsSlower)
            {
                Add(grid, source.StepOf(source.Begin(row)), values[row]);
                continue;
            }

            long begin = source.IsInterval ? source.Begin(row) : source.Begin(row) - source.StepMicros;
            Spread(source, begin, values[row], grid);
        }
    }

    /// <summary>
    /// The differences of a counter: each lies before the moment of its reading, and falls into the step that ends there. One over a gap
    /// stands whole at its end, in a step that is marked, since nobody knows when in the gap it came.
    /// </summary>
    public static bool[] LayCounter(GridSource source, CounterAmounts amounts, double[] grid)
    {
        Array.Fill(grid, double.NaN);
        bool[] overGap = new bool[grid.Length];
        for (int row = 0; row < amounts.Values.Length; row++)
        {
            if (!double.IsFinite(amounts.Values[row]))
            {
                continue;
            }

            long read = source.Begin(row) + (source.IsInterval ? source.StepMicros : 0);
            if (source.IsSlower && !amounts.OverGap[row])
            {
                Spread(source, read - source.StepMicros, amounts.Values[row], grid);
                continue;
            }

            long step = source.StepOf(read - 1);
            Add(grid, step, amounts.Values[row]);
            if (amounts.OverGap[row] && step >= 0 && step < overGap.Length)
            {
                overGap[step] = true;
            }
        }

        return overGap;
    }

    private static void Spread(GridSource source, long begin, double amount, double[] grid)
    {
        long steps = Math.Max(1, source.StepMicros / source.AxisStepMicros);
        long first = source.StepOf(begin);
        for (long step = first; step < first + steps; step++)
        {
            Add(grid, step, amount / steps);
        }
    }

    private static void Add(double[] grid, long step, double amount)
    {
        if (step >= 0 && step < grid.Length)
        {
            grid[step] = double.IsNaN(grid[step]) ? amount : grid[step] + amount;
        }
    }
}
