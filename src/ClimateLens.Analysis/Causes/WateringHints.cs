using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;

namespace ClimateLens.Analysis.Causes;

/// <summary>Waterings that the log may lack, seen from the humidity of the period (<see cref="WateringTraces"/>).</summary>
internal static class WateringHints
{
    /// <summary>Looks for them.</summary>
    /// <param name="house">The period.</param>
    /// <param name="balance">A balance with skill, fitted to the weeks before.</param>
    /// <param name="all">Columns of these weeks and the period, one behind the other.</param>
    public static ImmutableArray<WateringHint> Of(HousePeriod house, HouseBalance balance, BalanceInputs all)
    {
        TimeAxis axis = house.Frame.Axis;
        int before = balance.Inputs.Steps;
        return
        [
            .. WateringTraces.Find(all, balance.Fit).Where(t => t.Step >= before).Select(t => new WateringHint(
                axis.StartOf(house.FirstStep + t.Step - before).InZone(axis.Zone).ToOffsetDateTime(), Math.Round(t.RiseGm3, 2), Math.Round(t.Score, 1))),
        ];
    }
}
