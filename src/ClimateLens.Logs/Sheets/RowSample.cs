using ClimateLens.Science.Statistics;

namespace ClimateLens.Logs.Sheets;

/// <summary>
/// Rows drawn evenly over a file whatever its length, for medians: all of the first <see cref="Most"/>; when there are more, half of them by a fixed rule
/// on the row's number, and so on. The same file gives the same rows.
/// </summary>
/// <param name="columns">Columns of a row.</param>
internal sealed class RowSample(int columns)
{
    /// <summary>Most rows kept.</summary>
    public const int Most = 4096;

    private readonly List<ulong> _keys = [];
    private readonly List<double>[] _values = [.. Enumerable.Range(0, columns).Select(_ => new List<double>())];
    private ulong _mask;
    private ulong _next;

    /// <summary>Takes rows.</summary>
    public void Add(double[][] values, int count)
    {
        for (int row = 0; row < count; row++)
        {
            ulong key = Mixed(_next++);
            if ((key & _mask) != 0)
            {
                continue;
            }

            _keys.Add(key);
            for (int c = 0; c < _values.Length; c++)
            {
                _values[c].Add(values[c][row]);
            }

            while (_keys.Count > Most)
            {
                Thin();
            }
        }
    }

    /// <summary>Median of a column; null without values.</summary>
    public double? Median(int column)
    {
        double[] sorted = [.. _values[column].Where(v => !double.IsNaN(v)).Order()];
        return sorted.Length == 0 ? null : Quantiles.Of(sorted, 0.5);
    }

    private void Thin()
    {
        _mask = (_mask << 1) | 1;
        int kept = 0;
        for (int i = 0; i < _keys.Count; i++)
        {
            if ((_keys[i] & _mask) == 0)
            {
                _keys[kept] = _keys[i];
                foreach (List<double> values in _values)
                {
                    values[kept] = values[i];
                }

                kept++;
            }
        }

        _keys.RemoveRange(kept, _keys.Count - kept);
        foreach (List<double> values in _values)
        {
            values.RemoveRange(kept, values.Count - kept);
        }
    }

    /// <summary>The output function of SplitMix64 [SLF14]: spreads row numbers over all bits.</summary>
    private static ulong Mixed(ulong x)
    {
        x += 0x9E3779B97F4A7C15;
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
        x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
        return x ^ (x >> 31);
    }
}
