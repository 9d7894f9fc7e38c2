namespace ClimateLens.Science.Matching;

/// <summary>Means over windows of a column, each from two running sums.</summary>
internal sealed class WindowMeans
{
    private readonly double[] _sums;
    private readonly int[] _counts;

    public WindowMeans(ReadOnlySpan<double> values)
    {
        _sums = new double[values.Length + 1];
        _counts = new int[values.Length + 1];
        for (int i = 0; i < values.Length; i++)
        {
            bool known = double.IsFinite(values[i]);
            _sums[i + 1] = _sums[i] + (known ? values[i] : 0);
            _counts[i + 1] = _counts[i] + (known ? 1 : 0);
        }
    }

    public double ShareKnown => _counts.Length == 1 ? 0 : (double)_counts[^1] / (_counts.Length - 1);

    /// <summary>Mean of the known values from one step to before another, both within the column; NaN where fewer than half are known.</summary>
    public double Mean(int from, int until)
    {
        int count = _counts[until] - _counts[from];
        return 2 * count >= until - from && count > 0 ? (_sums[until] - _sums[from]) / count : double.NaN;
    }
}
