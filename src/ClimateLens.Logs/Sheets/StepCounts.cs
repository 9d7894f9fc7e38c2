using System.Collections.Immutable;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Imports;

namespace ClimateLens.Logs.Sheets;

/// <summary>The distances between the rows of a file, counted by whole seconds, and the longest of them.</summary>
internal sealed class StepCounts
{
    private const long MicrosPerSecond = 1_000_000;

    /// <summary>Different lengths that are told apart; the rest of an unruly log counts as no step.</summary>
    private const int MostLengths = 1 << 16;

    private readonly Dictionary<int, int> _counts = [];
    private readonly List<(long Length, long After)> _longest = [];
    private long _last = long.MinValue;
    private int _lastLength = -1;
    private int _run;
    private int _total;

    /// <summary>Takes the next stamp of ascending ones. [µs]</summary>
    public void Add(long utc)
    {
        if (utc > _last && _last != long.MinValue) // years may come out of order: the turn between them is then no step
        {
            Count(utc - _last);
        }

        _last = utc;
    }

    /// <summary>Most frequent distance, the shorter of two alike; null for fewer than two rows. [s]</summary>
    public int? Common
    {
        get
        {
            Flush();
            return _counts.Count == 0 ? null : _counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key).First().Key;
        }
    }

    /// <summary>Share of the distances that are a step long, to a minute or a quarter of it, whichever is less; null for none. [1]</summary>
    public double? Share(int stepSeconds)
    {
        Flush();
        double tolerance = Math.Min(60, stepSeconds / 4.0);
        return _total == 0 ? null : _counts.Where(c => Math.Abs(c.Key - stepSeconds) <= tolerance).Sum(c => (double)c.Value) / _total;
    }

    /// <summary>Distances of more than one and a half steps.</summary>
    public FileGaps Gaps(int stepSeconds)
    {
        Flush();
        var gaps = _counts.Where(c => c.Key > 1.5 * stepSeconds).ToList();
        double hours = gaps.Sum(c => (double)c.Value * (c.Key - stepSeconds)) / 3600;
        ImmutableArray<FileGap> longest =
        [
            .. _longest.Where(g => g.Length > 1.5 * stepSeconds * MicrosPerSecond)
                .OrderByDescending(g => g.Length).ThenBy(g => g.After).Take(FileGaps.MostListed)
                .OrderBy(g => g.After)
                .Select(g => new FileGap(Micros.ToInstant(g.After), Micros.ToInstant(g.After + g.Length))),
        ];
        return new FileGaps(gaps.Sum(c => c.Value), hours, longest);
    }

    private void Count(long length)
    {
        _total++;
        int seconds = (int)Math.Min(length / MicrosPerSecond, int.MaxValue);
        if (seconds == _lastLength)
        {
            _run++;
        }
        else
        {
            Flush();
            (_lastLength, _run) = (seconds, 1);
        }

        if (_longest.Count < FileGaps.MostListed || length > _longest[^1].Length)
        {
            Keep(length);
        }
    }

    /// <summary>Keeps the longest in descending order; of two alike the earlier one goes first.</summary>
    private void Keep(long length)
    {
        int at = _longest.FindIndex(g => g.Length < length);
        _longest.Insert(at < 0 ? _longest.Count : at, (length, _last));
        if (_longest.Count > FileGaps.MostListed)
        {
            _longest.RemoveAt(FileGaps.MostListed);
        }
    }

    private void Flush()
    {
        if (_run > 0 && (_counts.ContainsKey(_lastLength) || _counts.Count < MostLengths))
        {
            _counts[_lastLength] = _counts.GetValueOrDefault(_lastLength) + _run;
        }

        _run = 0;
        _lastLength = -1;
    }
}
