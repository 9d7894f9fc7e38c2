using System.Collections.Concurrent;

namespace ClimateLens.Logs.Readings;

/// <summary>Blocks for use again, so that a long file does not make new ones all the time. Several threads may use it.</summary>
/// <param name="names">Column names in ordinal order.</param>
/// <param name="most">Blocks kept at most.</param>
internal sealed class BlockPool(string[] names, int most)
{
    private readonly ConcurrentBag<YearRows> _free = [];

    /// <summary>An empty block.</summary>
    public YearRows Rent() => _free.TryTake(out YearRows? block) ? block : new YearRows(names);

    /// <summary>Gives a block back; nobody may look at it any more.</summary>
    public void Return(YearRows block)
    {
        if (_free.Count < most)
        {
            block.Count = 0;
            _free.Add(block);
        }
    }
}
