namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Reads each row by that of several formats that keeps time moving on by the least.</summary>
/// <param name="source">Where the stamps stand.</param>
/// <param name="formats">The formats.</param>
/// <param name="newestFirst">Whether time runs backward in the file.</param>
internal sealed class MixedTally(TimeSource source, IReadOnlyList<StampFormat> formats, bool newestFirst)
{
    private readonly StampTally[] _readers = [.. formats.Select(f => StampTally.TryCreate(source, f)).OfType<StampTally>()];
    private readonly int[] _taken = new int[formats.Count];
    private long? _last;

    /// <summary>Where the stamps stand.</summary>
    public TimeSource Source => source;

    /// <summary>The formats.</summary>
    public IReadOnlyList<StampFormat> Formats => formats;

    /// <summary>Rows that each format took, where the formats differ or only one reads the row.</summary>
    public IReadOnlyList<int> Taken => _taken;

    /// <summary>How the times follow each other.</summary>
    public OrderTally Order { get; } = new();

    /// <summary>Rows read, less what looks odd.</summary>
    public int Score => Order.Count - Order.Oddities();

    /// <summary>Reads the next row.</summary>
    public void Add(string stamp)
    {
        int best = -1;
        long taken = 0;
        bool differ = false;
        int read = 0;
        for (int i = 0; i < _readers.Length; i++)
        {
            if (_readers[i].TryRead(stamp, out long micros))
            {
                read++;
                differ |= best >= 0 && micros != taken;
                if (best < 0 || Cost(micros) < Cost(taken))
                {
                    (best, taken) = (i, micros);
                }
            }
        }

        if (best >= 0)
        {
            _taken[best] += differ || read == 1 ? 1 : 0;
            Order.Add(taken);
            _last = taken;
        }
    }

    /// <summary>A step back costs more than any step on.</summary>
    private double Cost(long micros)
    {
        double step = newestFirst ? (double)((_last ?? micros) - micros) : micros - (_last ?? micros);
        return step >= 0 ? step : 1e18 - step;
    }
}
