using System.Collections.Immutable;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Sheets;

/// <summary>
/// The readings of a file that tell of the time of day, for <see cref="SourceClock"/>: means of five minutes at least, of the last
/// 400 days of the file, so that a file of any length takes the same room.
/// </summary>
internal sealed class ClockTrack
{
    private const long MicrosPerSecond = 1_000_000, BinMicros = 300 * MicrosPerSecond;
    private const long KeptMicros = 400 * 86400 * MicrosPerSecond;

    private readonly (string Name, int Column)[] _columns;
    private readonly List<long> _utc = [];
    private readonly List<float>[] _values;
    private readonly float[] _sums;
    private readonly int[] _counts;
    private long _bin = long.MinValue;
    private long _binStamps;
    private int _binRows;

    public ClockTrack(string[] names)
    {
        _columns = [.. names.Select((name, i) => (name, i)).Where(c => SourceClock.IsJudged(ColumnKey.Parse(c.name).Channel))];
        _values = [.. _columns.Select(_ => new List<float>())];
        _sums = new float[_columns.Length];
        _counts = new int[_columns.Length];
    }

    /// <summary>Takes rows in ascending time.</summary>
    public void Add(long[] utc, double[][] values, int count)
    {
        for (int row = 0; row < count; row++)
        {
            long bin = utc[row] / BinMicros;
            if (bin != _bin)
            {
                Close();
                _bin = bin;
            }

            _binStamps += utc[row] - (bin * BinMicros);
            _binRows++;
            for (int c = 0; c < _columns.Length; c++)
            {
                double value = values[_columns[c].Column][row];
                if (!double.IsNaN(value))
                {
                    _sums[c] += (float)value;
                    _counts[c]++;
                }
            }
        }
    }

    /// <summary>The readings as a source of their own.</summary>
    /// <param name="house">House of the export.</param>
    /// <param name="source">Its name.</param>
    /// <param name="side">What its stamps label.</param>
    /// <param name="stepSeconds">Its step. [s]</param>
    public ReadingBatch ToBatch(string house, string source, StampSide side, int stepSeconds)
    {
        Close();
        _bin = long.MinValue;
        int[] order = [.. Enumerable.Range(0, _utc.Count).OrderBy(i => _utc[i])];
        int[] kept = [.. order.Where(i => _utc[i] >= _utc[order[^1]] - KeptMicros)];
        var columns = _columns.Select((c, i) => (c.Name, Values: kept.Select(k => (double)_values[i][k]).ToArray()))
            .ToImmutableSortedDictionary(c => c.Name, c => c.Values, StringComparer.Ordinal);

        // Faster readings were made means of five minutes, stamped in their middle.
        bool binned = stepSeconds < BinMicros / MicrosPerSecond;
        return new ReadingBatch(house, source, binned ? StampSide.Instant : side, binned ? (int)(BinMicros / MicrosPerSecond) : stepSeconds, [.. kept.Select(k => _utc[k])], columns);
    }

    private void Close()
    {
        if (_binRows == 0)
        {
            return;
        }

        _utc.Add((_bin * BinMicros) + (_binStamps / _binRows));
        for (int c = 0; c < _columns.Length; c++)
        {
            _values[c].Add(_counts[c] == 0 ? float.NaN : _sums[c] / _counts[c]);
        }

        Array.Clear(_sums);
        Array.Clear(_counts);
        (_binStamps, _binRows) = (0, 0);
        Forget();
    }

    /// <summary>Forgets what lies more than 400 days back, when that is at least half of what is kept.</summary>
    private void Forget()
    {
        int middle = _utc.Count / 2;
        if (_utc.Count % 4096 == 0 && _utc[middle] < _utc[^1] - KeptMicros)
        {
            _utc.RemoveRange(0, middle);
            foreach (List<float> values in _values)
            {
                values.RemoveRange(0, middle);
            }
        }
    }
}
