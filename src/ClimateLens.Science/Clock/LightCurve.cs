namespace ClimateLens.Science.Clock;

/// <summary>Readings of a sensor in ascending time, without missing ones, each at the middle of what it describes.</summary>
/// <param name="Minutes">Times. [min after 1970-01-01 00:00 UTC]</param>
/// <param name="Values">Readings in any unit.</param>
/// <param name="StepMin">Nominal step. [min]</param>
internal sealed record LightCurve(double[] Minutes, double[] Values, double StepMin)
{
    private const double MicrosPerMinute = 6e7;

    /// <summary>Number of readings.</summary>
    public int Count => Minutes.Length;

    /// <summary>Takes the finite readings.</summary>
    /// <param name="utcMicros">Stamps, ascending. [µs after 1970-01-01 00:00 UTC]</param>
    /// <param name="values">Readings.</param>
    /// <param name="stepSeconds">Nominal step. [s]</param>
    /// <param name="toMiddleSeconds">From a stamp to the middle of what it labels. [s]</param>
    public static LightCurve Of(ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values, double stepSeconds, double toMiddleSeconds)
    {
        Guard.SameLength(utcMicros.Length, values.Length);
        List<double> minutes = new(values.Length), finite = new(values.Length);
        for (int i = 0; i < values.Length; i++)
        {
            if (double.IsFinite(values[i]))
            {
                minutes.Add((utcMicros[i] / MicrosPerMinute) + (toMiddleSeconds / 60));
                finite.Add(values[i]);
            }
        }

        return new LightCurve([.. minutes], [.. finite], stepSeconds / 60);
    }

    /// <summary>Index of the first reading at or after a moment. [min after 1970-01-01 00:00 UTC]</summary>
    public int IndexOf(double minute)
    {
        int at = Array.BinarySearch(Minutes, minute);
        return at >= 0 ? at : ~at;
    }

    /// <summary>The readings [from, to), sorted ascending.</summary>
    public double[] Sorted(int from, int to)
    {
        double[] sorted = Values[from..to];
        Array.Sort(sorted);
        return sorted;
    }
}
