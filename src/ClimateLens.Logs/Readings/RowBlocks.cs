using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Readings;

/// <summary>Gathers the rows of a file into blocks by UTC year, in the order of the file, and passes full blocks on.</summary>
/// <param name="rows">Takes the blocks.</param>
/// <param name="pump">Hands them over.</param>
/// <param name="blockRows">Rows of a full block.</param>
internal sealed class RowBlocks(FileRows rows, BlockPump pump, int blockRows)
{
    private readonly SortedDictionary<int, YearRows> _open = [];
    private YearRows? _block;
    private int _year;
    private long _yearFrom = 1;
    private long _yearTo;

    /// <summary>Rows that may still change, and their blocks; such a block is not passed on.</summary>
    public WaitingRows Waiting { get; } = new();

    /// <summary>Adds a row; answers with its block, whose last row it is.</summary>
    public YearRows Append(long utc, int file, int line, ReadOnlySpan<double> values)
    {
        if (utc < _yearFrom || utc >= _yearTo)
        {
            Turn(utc);
        }

        if (_block!.Count >= blockRows && !Waiting.Holds(_block))
        {
            PassOn();
        }

        _block.Append(utc, file, line, values);
        return _block;
    }

    /// <summary>Passes all blocks on; nothing waits any more.</summary>
    public void Flush()
    {
        pump.Finish();
        foreach ((int year, YearRows block) in _open)
        {
            rows.Take(year, block);
        }

        _open.Clear();
    }

    /// <summary>Passes on the full block, and before it what is open of earlier years.</summary>
    private void PassOn()
    {
        foreach ((int year, YearRows block) in _open.Where(open => open.Key <= _year && open.Value.Count > 0 && !Waiting.Holds(open.Value)).ToArray())
        {
            pump.Post(year, block);
            _open[year] = rows.Pool.Rent();
        }

        _block = _open[_year];
    }

    private void Turn(long utc)
    {
        _year = CivilDate.YearOf(utc);
        (_yearFrom, _yearTo) = (CivilDate.YearStart(_year), CivilDate.YearStart(_year + 1));
        if (!_open.TryGetValue(_year, out _block))
        {
            _open.Add(_year, _block = rows.Pool.Rent());
        }
    }
}
