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
            long steps = Math.Max(1, source.StepMicros / source.AxisStepMicros);
            long first = source.StepOf(begin);
            for (long step = first; step < first + steps; step++)
            {
                Add(grid, step, values[row] / steps);
            }
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
