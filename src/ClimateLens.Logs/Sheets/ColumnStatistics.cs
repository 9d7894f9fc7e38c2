namespace ClimateLens.Logs.Sheets;

/// <summary>Count, smallest and largest value of one column.</summary>
internal struct ColumnStatistics
{
    /// <summary>Values.</summary>
    public int Count;

    /// <summary>Smallest value.</summary>
    public double Min;

    /// <summary>Largest value.</summary>
    public double Max;

    /// <summary>No values yet.</summary>
    public static ColumnStatistics Empty => new() { Min = double.PositiveInfinity, Max = double.NegativeInfinity };

    /// <summary>Takes values; NaN is missing.</summary>
    public void Add(ReadOnlySpan<double> values)
    {
        (int count, double min, double max) = (Count, Min, Max);
        foreach (double value in values)
        {
            count += double.IsNaN(value) ? 0 : 1;
            min = value < min ? value : min;
            max = value > max ? value : max;
        }

        (Count, Min, Max) = (count, min, max);
    }
}
