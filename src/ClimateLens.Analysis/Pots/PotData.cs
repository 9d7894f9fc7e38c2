using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>All that the judging of pots looks at.</summary>
/// <param name="house">The house period.</param>
/// <param name="past">The weeks before, aligned and checked; null where there are none.</param>
internal sealed class PotData(HousePeriod house, HousePeriod? past)
{
    private readonly ImmutableArray<PotCheck> _all = PotChecks.Of(house.Input);
    private ImmutableSortedDictionary<string, ImmutableArray<BenchVisit>>? _visits;
    private BenchWaterings? _waterings;

    /// <summary>The house period.</summary>
    public HousePeriod House => house;

    /// <summary>The weeks before, or null.</summary>
    public HousePeriod? Past => past;

    /// <summary>Checks of the period and of the weeks before.</summary>
    public ImmutableArray<PotCheck> All => _all;

    /// <summary>Checks of the period.</summary>
    public IEnumerable<PotCheck> Own => _all.Where(c => house.Input.Period.Contains(c.At));

    /// <summary>Visits by bench, those of the weeks before too.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<BenchVisit>> Visits => _visits ??= BenchVisits.Of(_all);

    /// <summary>Waterings by bench, those of the weeks before too.</summary>
    public BenchWaterings Waterings => _waterings ??= new(Events, Visits.Keys);

    /// <summary>The nursery's zone.</summary>
    public DateTimeZone Zone => house.Input.Nursery.Zone;

    /// <summary>The local day of a moment.</summary>
    public LocalDate DayOf(Instant at) => at.InZone(Zone).Date;

    /// <summary>Visits of the period.</summary>
    public IEnumerable<BenchVisit> OwnVisits(string bench) => Visits[bench].Where(v => house.Input.Period.Contains(v.At));

    private IEnumerable<WateringEvent> Events
        => (past?.Events ?? []).Where(e => e.Start < house.Input.RunIn.Start).Concat(house.Events);
}
