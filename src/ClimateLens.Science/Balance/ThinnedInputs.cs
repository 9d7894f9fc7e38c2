namespace ClimateLens.Science.Balance;

/// <summary>The same house in longer steps.</summary>
public static class ThinnedInputs
{
    /// <summary>Joins steps: drivers as means of the known, the humidity as that at the end, waterings as sums; what is left over at the end is dropped.</summary>
    /// <param name="inputs">The house, columns of one length.</param>
    /// <param name="times">How many steps are joined to one, 1 or more.</param>
    public static BalanceInputs Of(BalanceInputs inputs, int times)
    {
        if (times == 1)
        {
            return inputs;
        }

        int steps = inputs.Steps / times;
        return inputs with
        {
            StepHours = inputs.StepHours * times,
            Day = Joined(inputs.Day, steps, group => group[^1], times),
            HumidityGm3 = Joined(inputs.HumidityGm3, steps, group => group[^1], times),
            AirC = Means(inputs.AirC, steps, times),
            OutsideGm3 = Means(inputs.OutsideGm3, steps, times),
            SunWm2 = Means(inputs.SunWm2, steps, times),
            Cover = Means(inputs.Cover, steps, times),
            Vent = Means(inputs.Vent, steps, times),
            WindMs = Means(inputs.WindMs, steps, times),
            Fan = Means(inputs.Fan, steps, times),
            CoverC = Means(inputs.CoverC, steps, times),
            LeafWetted = Joined(inputs.LeafWetted, steps, Sum, times),
            FloorWetted = Joined(inputs.FloorWetted, steps, Sum, times),
        };
    }

    private static ReadOnlyMemory<double> Means(ReadOnlyMemory<double> column, int steps, int times) => Joined(column, steps, Mean, times);

    private static ReadOnlyMemory<T> Joined<T>(ReadOnlyMemory<T> column, int steps, Func<ReadOnlySpan<T>, T> join, int times)
    {
        if (column.IsEmpty)
        {
            return column;
        }

        T[] joined = new T[steps];
        for (int i = 0; i < steps; i++)
        {
            joined[i] = join(column.Span.Slice(i * times, times));
        }

        return joined;
    }

    private static double Sum(ReadOnlySpan<double> group)
    {
        double sum = 0;
        foreach (double value in group)
        {
            sum += value;
        }

        return sum;
    }

    private static double Mean(ReadOnlySpan<double> group)
    {
        double sum = 0;
        int known = 0;
        foreach (double value in group)
        {
            (sum, known) = double.IsNaN(value) ? (sum, known) : (sum + value, known + 1);
        }

        return sum / known;
    }
}
