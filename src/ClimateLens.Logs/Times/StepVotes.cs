namespace ClimateLens.Logs.Times;

/// <summary>How often neighbouring stamps of a source are how far apart.</summary>
internal sealed class StepVotes
{
    /// <summary>Where so many neighbours are one distance apart, that is the step. Common practice, no source; held by tests on floored, jittering and mixed stamps.</summary>
    public const double ClearShare = 0.75;

    private readonly Dictionary<long, int> _votes = [];
    private long _stamp;
    private long _last;
    private int _times;
    private bool _follows;

    /// <summary>Number of distances.</summary>
    public int Count { get; private set; }

    /// <summary>How often each distance was seen. [µs]</summary>
    public IReadOnlyDictionary<long, int> Votes
    {
        get
        {
            Tally();
            return _votes;
        }
    }

    /// <summary>The most frequent distance, the shortest of several, and how often it was seen; null without any. [µs]</summary>
    public (long Step, int Times)? Common
        => Count == 0 ? null : Votes.OrderByDescending(v => v.Value).ThenBy(v => v.Key).Select(v => (v.Key, v.Value)).First();

    /// <summary>
    /// The step where it is beyond doubt: then it is the step of any two such stretches of one source together as well. Null where it is not. [µs]
    /// </summary>
    public long? Clear => Common is (long step, int times) && times >= ClearShare * Count ? step : null;

    /// <summary>The next stamp stands apart from those before.</summary>
    public void Break() => _follows = false;

    /// <summary>Takes the next stamp, in ascending order. [µs]</summary>
    public void Add(long stamp)
    {
        if (_follows)
        {
            long step = stamp - _stamp;
            if (step != _last)
            {
                Tally();
                _last = step;
            }

            _times++;
            Count++;
        }

        (_stamp, _follows) = (stamp, true);
    }

    private void Tally()
    {
        if (_times > 0)
        {
            _votes[_last] = _votes.GetValueOrDefault(_last) + _times;
            _times = 0;
        }
    }
}
