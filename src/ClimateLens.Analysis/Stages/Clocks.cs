using ClimateLens.Analysis.Clock;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Holds the clock of each source against the sun, over run-in and period and over the files behind them. It only adds what it found:
/// no stamp is moved. Method and limits: docs/science/clock.md.
/// </summary>
public static class Clocks
{
    /// <summary>Checks every source of a house period.</summary>
    public static HousePeriod Check(HousePeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        HouseInput input = period.Input;
        return period with
        {
            Clocks =
            [
                .. input.Batches
                    .OrderBy(b => b.House == input.House.Id ? 0 : 1)
                    .ThenBy(b => b.Source, StringComparer.Ordinal)
                    .Select(batch => Of(input, batch)),
            ],
        };
    }

    private static ClockReport Of(HouseInput input, ReadingBatch batch)
    {
        ClockCheck seen = SourceClock.Check(input.Nursery, SourceClock.ZoneOf(input.Nursery, batch.House, batch.Source), batch);
        (ClockCheck check, string file) = FileClocks.Prefer(input, batch, seen);
        return new ClockReport(batch.House, batch.Source, file, ClockFaults.Touches(input, check), check);
    }
}
