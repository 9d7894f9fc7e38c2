using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Stages;

/// <summary>What people saw of the pots: rounds, band, swings, dry-downs, how alike they grade, drying and a forecast, and what it means for roots. docs/science/pots.md.</summary>
public static class PotChecked
{
    /// <summary>Judges the pot checks of a period.</summary>
    /// <param name="house">The house period with its air.</param>
    /// <param name="past">The weeks before, by <see cref="Past"/>; null where there are none.</param>
    public static PotState Of(HousePeriod house, HousePeriod? past)
    {
        PotData data = new(house, past);
        int count = data.Own.Count();
        if (count == 0)
        {
            return new(null, null);
        }

        PotReport pots = new(
            count,
            PotRounds.ByRound(data),
            PotRounds.ByDay(data),
            PotRounds.ByPerson(data),
            PotBand.Of(data),
            PotBand.BeforeWaterings(data),
            Swings.Benches(data),
            Swings.Jumps(data),
            DryDowns.Of(data),
            GraderAgreement.Of(data),
            DryingOf.Of(data));
        return new(pots, RootSignals.Of(data, pots.DryDowns));
    }
}
