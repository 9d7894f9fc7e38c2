using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>
/// Finds the step of a source from its stamps in ascending order. Where most neighbours are one distance apart, that is the step. Where they are not, as
/// when a logger cuts its stamps to whole minutes (0:00, 0:04, 0:09, 0:15) or asks its sensors when it finds the time, the step is the mean
/// distance, if the stamps keep to such a step: the errors of single stamps cancel in the sum.
/// </summary>
internal sealed class StepFinder
{
    // Shares that decide: common practice, no source; held by tests on floored, jittering and mixed stamps.
    private const double UngappedShare = 0.7;
    private const double FittingShare = 0.95;
    private const double NiceReach = 0.01;
    private const int BlockRows = 64;

    // Steps that loggers have. [s]
    private static readonly int[] Nice =
        [1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 300, 360, 600, 720, 900, 1200, 1800, 3600, 7200, 10800, 14400, 21600, 28800, 43200, 86400];

    private readonly StepVotes _votes = new();
    private readonly List<ReadOnlyMemory<long>> _runs = [];

    /// <summary>Adds stamps in ascending order, which must not change until the step is found; distances between what is added apart do not count. [µs]</summary>
    public void Add(ReadOnlyMemory<long> stamps)
    {
        _votes.Break();
        foreach (long stamp in stamps.Span)
        {
            _votes.Add(stamp);
        }

        _runs.Add(stamps);
    }

    /// <summary>The step; null when there are fewer than two stamps.</summary>
    public NominalStep? Find()
    {
        if (_votes.Common is not (long common, int times))
        {
            return null;
        }

        if (times < StepVotes.ClearShare * _votes.Count && Mean() is long mean && Stray(mean) is double stray)
        {
            return new NominalStep((int)(mean / CivilDate.SecondMicros), ShareOf(mean), ShareOf(mean) < StepVotes.ClearShare ? stray : 0);
        }

        return new NominalStep((int)Math.Clamp(common / CivilDate.SecondMicros, 0, int.MaxValue), ShareOf(common), 0);
    }

    private double ShareOf(long step)
        => (double)_votes.Votes.Where(v => Math.Abs(v.Key - step) < CivilDate.SecondMicros).Sum(v => v.Value) / _votes.Count;

    /// <summary>The mean of the distances that are no gaps, at a usual step where one is near; null where too many are gaps. [µs]</summary>
    private long? Mean()
    {
        long median = Median();
        double sum = 0;
        long count = 0;
        foreach ((long step, int times) in _votes.Votes.Where(v => v.Key * 2 >= median && v.Key * 2 <= median * 3))
        {
            sum += (double)step * times;
            count += times;
        }

        if (count < UngappedShare * _votes.Count || count == 0)
        {
            return null;
        }

        double seconds = sum / count / CivilDate.SecondMicros;
        int nice = Nice.MinBy(n => Math.Abs(n - seconds));
        return Math.Max(1, Math.Abs(nice - seconds) <= NiceReach * nice ? nice : (long)Math.Round(seconds)) * CivilDate.SecondMicros;
    }

    private long Median()
    {
        long below = 0;
        foreach ((long step, int times) in _votes.Votes.OrderBy(v => v.Key))
        {
            below += times;
            if (below * 2 >= _votes.Count)
            {
                return step;
            }
        }

        return 0;
    }

    /// <summary>
    /// How far stamps lie from the middle of their neighbours' places in the step, at the outermost of those within a quarter step; null when
    /// more than one of twenty lies further. Looked at block by block, as a logger's clock may run slow. [s]
    /// </summary>
    private double? Stray(long step)
    {
        long fitting = 0;
        long all = 0;
        long widest = 0;
        foreach (ReadOnlyMemory<long> run in _runs)
        {
            for (int start = 0; start < run.Length; start += BlockRows)
            {
                ReadOnlySpan<long> block = run.Span.Slice(start, Math.Min(BlockRows, run.Length - start));
                long middle = StepPhase.MiddleOf(block, step);
                foreach (long stamp in block)
                {
                    long apart = Math.Abs(StepPhase.Apart(stamp, middle, step));
                    all++;
                    fitting += apart * 4 <= step ? 1 : 0;
                    widest = Math.Max(widest, apart * 4 <= step ? apart : 0);
                }
            }
        }

        return fitting >= FittingShare * all ? (double)widest / CivilDate.SecondMicros : null;
    }
}
