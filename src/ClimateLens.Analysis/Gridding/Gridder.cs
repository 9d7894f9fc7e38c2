using ClimateLens.Nursery.Channels;
using GriddingKind = ClimateLens.Nursery.Channels.Gridding;

namespace ClimateLens.Analysis.Gridding;

/// <summary>
/// Lays one column of a source on the grid: mean of faster readings, linear or hold between slower ones, sums of amounts.
/// What lies further apart than <see cref="GridSource.BridgeMicros"/> stays a gap (NaN).
/// </summary>
internal static class Gridder
{
    /// <summary>Lays a column. Where there are only readings that cannot be, one of them stands in the step, so that it is seen and flagged.</summary>
    /// <param name="source">Where it comes from.</param>
    /// <param name="values">Its values. [SI unit of the channel]</param>
    /// <param name="channel">What they are.</param>
    /// <param name="deadRows">Rows whose zeros mean nothing (<see cref="Believable.DeadRows"/>).</param>
    public static double[] Lay(GridSource source, double[] values, Channel channel, bool[] deadRows)
    {
        double[] grid = new double[source.Count];
        if (channel.Gridding == GriddingKind.Amount)
        {
            Amounts.Lay(source, values, grid);
            return grid;
        }

        (double[] possible, double[]? impossible) = Believable.Split(values, channel, channel.Gridding == GriddingKind.Smooth ? deadRows : new bool[values.Length]);
        LayState(source, possible, channel, grid);
        if (impossible is not null)
        {
            double[] others = new double[source.Count];
            LayState(source, impossible, channel, others);
            for (int step = 0; step < grid.Length; step++)
            {
                grid[step] = double.IsNaN(grid[step]) ? others[step] : grid[step];
            }
        }

        return grid;
    }

    private static void LayState(GridSource source, double[] values, Channel channel, double[] grid)
    {
        Means(source, values, grid);
        if (source.IsSlower && (source.IsInterval || channel.Gridding == GriddingKind.Hold))
        {
            Hold(source, values, grid);
        }
        else
        {
            Bridge(source, values, grid, channel.Gridding == GriddingKind.Smooth);
        }
    }

    /// <summary>Mean of the readings that begin in a step; NaN where there is none.</summary>
    private static void Means(GridSource source, double[] values, double[] grid)
    {
        int[] counts = new int[grid.Length];
        for (int row = 0; row < values.Length; row++)
        {
            long step = source.StepOf(source.Begin(row));
            if (step >= 0 && step < grid.Length && double.IsFinite(values[row]))
            {
                grid[step] += values[row];
                counts[step]++;
            }
        }

        for (int i = 0; i < grid.Length; i++)
        {
            grid[i] = counts[i] > 0 ? grid[i] / counts[i] : double.NaN;
        }
    }

    /// <summary>A reading holds until the next one, as far as the bridge allows; an interval's value to the interval's end.</summary>
    private static void Hold(GridSource source, double[] values, double[] grid)
    {
        for (int row = 0; row < values.Length; row++)
        {
            if (!double.IsFinite(values[row]))
            {
                continue;
            }

            long begin = source.Begin(row);
            long next = row + 1 < values.Length ? source.Begin(row + 1) : long.MaxValue;
            long reach = source.IsInterval || next - begin > source.BridgeMicros ? begin + source.StepMicros : next;
            FillEmpty(grid, source.StepOf(begin) + 1, source.StepOf(Math.Min(reach, next) - 1), values[row]);
        }
    }

    private static void FillEmpty(double[] grid, long first, long last, double value)
    {
        for (long step = Math.Max(0, first); step <= Math.Min(last, grid.Length - 1); step++)
        {
            grid[step] = double.IsNaN(grid[step]) ? value : grid[step];
        }
    }

    /// <summary>Fills steps between two readings that lie close enough: by a straight line, or with the earlier one.</summary>
    private static void Bridge(GridSource source, double[] values, double[] grid, bool linear)
    {
        int before = -1;
        for (int row = 0; row < values.Length; row++)
        {
            if (!double.IsFinite(values[row]))
            {
                continue;
            }

            if (before >= 0 && source.Begin(row) - source.Begin(before) <= source.BridgeMicros)
            {
                Span(source, grid, (source.Begin(before), values[before]), (source.Begin(row), values[row]), linear);
            }

            before = row;
        }
    }

    private static void Span(GridSource source, double[] grid, (long At, double Value) a, (long At, double Value) b, bool linear)
    {
        long first = Math.Max(0, source.StepOf(a.At) + 1);
        long last = Math.Min(grid.Length - 1, source.StepOf(b.At) - 1);
        for (long step = first; step <= last; step++)
        {
            if (double.IsNaN(grid[step]))
            {
                double share = (double)(source.AxisStartMicros + (step * source.AxisStepMicros) - a.At) / (b.At - a.At);
                grid[step] = linear ? a.Value + (share * (b.Value - a.Value)) : a.Value;
            }
        }
    }
}
