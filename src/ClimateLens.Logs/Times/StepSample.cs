namespace ClimateLens.Logs.Times;

/// <summary>The first stamps of a file, out of which its step is found: enough for a year of five-minute rows, and bounded.</summary>
internal sealed class StepSample
{
    private const int Most = 131_072;

    private readonly List<long> _stamps = [];
    private bool _isAscending = true;

    /// <summary>Adds a stamp; one that repeats the last is the same row of a long table. [µs]</summary>
    public void Add(long utcMicros)
    {
        if (_stamps.Count < Most && (_stamps.Count == 0 || _stamps[^1] != utcMicros))
        {
            _isAscending &= _stamps.Count == 0 || utcMicros > _stamps[^1];
            _stamps.Add(utcMicros);
        }
    }

    /// <summary>The step; null when there are fewer than two stamps.</summary>
    public NominalStep? Find()
    {
        long[] sorted = _isAscending ? [.. _stamps] : [.. _stamps.Order().Distinct()];
        var finder = new StepFinder();
        finder.Add(sorted);
        return finder.Find();
    }
}
