using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Store;

/// <summary>
/// The weeks that one house's reviews look back at, kept while that house's pages are made: each is looked back at by many pages, and as one and the same object it is hashed and worked out once.
/// </summary>
internal sealed class EarlierWeeks
{
    private readonly Dictionary<IsoWeek, HouseInput> _weeks = [];
    private HouseSettings? _house;
    private Duration _runIn;

    /// <summary>A week as it is kept, or loaded.</summary>
    /// <param name="house">The house; another one than before empties the memory.</param>
    /// <param name="runIn">Run-in of the weeks; likewise.</param>
    /// <param name="week">The week.</param>
    /// <param name="load">Loads it.</param>
    public HouseInput Get(HouseSettings house, Duration runIn, IsoWeek week, Func<HouseInput> load)
    {
        if (!ReferenceEquals(house, _house) || runIn != _runIn)
        {
            _weeks.Clear();
            (_house, _runIn) = (house, runIn);
        }

        if (!_weeks.TryGetValue(week, out HouseInput? input))
        {
            _weeks[week] = input = load();
        }

        return input;
    }

    /// <summary>Forgets the weeks before one, which later pages do not look at.</summary>
    public void ForgetBefore(IsoWeek first)
    {
        foreach (IsoWeek old in _weeks.Keys.Where(week => week < first).ToList())
        {
            _weeks.Remove(old);
        }
    }

    /// <summary>Forgets all: the store has changed.</summary>
    public void Clear() => _weeks.Clear();
}
