namespace ClimateLens.Analysis.Checks;

/// <summary>Highest less lowest of the last values of a series, NaN left out; each value costs constant time on average.</summary>
internal sealed class SlidingRange(int window)
{
    private readonly Queue _lowest = new(window + 1);
    private readonly Queue _highest = new(window + 1);
    private readonly bool[] _present = new bool[window];
    private int _next;

    /// <summary>How many of the last values are there.</summary>
    public int Present { get; private set; }

    /// <summary>Range of those that are there; NaN when none is.</summary>
    public double Range => Present == 0 ? double.NaN : _highest.First - _lowest.First;

    /// <summary>Takes the next value in and the oldest one out.</summary>
    public void Push(double value)
    {
        int slot = _next % window;
        Present -= _present[slot] ? 1 : 0;
        _present[slot] = !double.IsNaN(value);
        Present += _present[slot] ? 1 : 0;
        if (_present[slot])
        {
            _lowest.Push(_next, value, -1);
            _highest.Push(_next, value, 1);
        }

        _lowest.DropBefore(_next - window + 1);
        _highest.DropBefore(_next - window + 1);
        _next++;
    }

    /// <summary>Candidates for the extreme of the window, best first (a monotonic queue in a ring).</summary>
    private sealed class Queue(int capacity)
    {
        private readonly (int At, double Value)[] _ring = new (int, double)[capacity];
        private int _first;
        private int _count;

        public double First => _ring[_first].Value;

        public void Push(int at, double value, int sign)
        {
            while (_count > 0 && sign * _ring[(_first + _count - 1) % capacity].Value <= sign * value)
            {
                _count--;
            }

            _ring[(_first + _count) % capacity] = (at, value);
            _count++;
        }

        public void DropBefore(int at)
        {
            while (_count > 0 && _ring[_first].At < at)
            {
                _first = (_first + 1) % capacity;
                _count--;
            }
        }
    }
}
