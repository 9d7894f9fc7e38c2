using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.Nursery;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>A level that a review foretold for the day after its week, and what the simulator's pots then held.</summary>
/// <param name="Seed">Seed of the nursery.</param>
/// <param name="House">House id.</param>
/// <param name="Week">ISO week.</param>
/// <param name="Bench">Bench.</param>
/// <param name="Forecast">What was foretold. [level]</param>
/// <param name="Yesterday">Mean grade of the bench about a day before. [level]</param>
/// <param name="Truth">Mean level of its pots. [level]</param>
/// <param name="Noise">Standard deviation of a stretch by the review: grades have it, the truth has not. [levels]</param>
public sealed record RecoveredLevel(ulong Seed, string House, string Week, string Bench, Estimate Forecast, double Yesterday, double Truth, double Noise);

/// <summary>Judges simulated weeks with pot checks, by the stages that a review takes, and holds the levels foretold to the simulator's own pots, where nothing was watered before.</summary>
public static class PotRecovery
{
    /// <summary>The weeks that have four weeks of checks before them.</summary>
    public static IReadOnlyList<string> Weeks { get; } = ["2025-W41", "2025-W42", "2025-W43", "2025-W44"];

    /// <summary>All levels foretold for a nursery.</summary>
    public static IEnumerable<RecoveredLevel> Of(ulong seed)
    {
        NurseryRun run = NurseryRun.Of(seed);
        return Weeks.SelectMany(week => run.Houses.SelectMany(house => Levels(run, house, week)));
    }

    private static IEnumerable<RecoveredLevel> Levels(NurseryRun run, HouseRun house, string week)
    {
        HouseInput input = SimulatedPots.Of(run, house, week);
        HousePeriod period = AirStates.Add(Quality.Check(Alignment.Align(input)));
        PotReport pots = PotChecked.Of(period, Past.Of(period)).Pots!;
        foreach (BenchDrying bench in pots.Drying?.Benches ?? [])
        {
            PotVisit[] visits = [.. pots.Benches.Single(b => b.Bench == bench.Bench).Visits];
            foreach (LevelForecast forecast in new[] { bench.Morning, bench.Afternoon }.OfType<LevelForecast>())
            {
                Instant at = forecast.At.ToInstant();
                PotVisit? yesterday = visits.Where(v => Off(v.At.ToInstant(), at) <= Duration.FromHours(4)).MinBy(v => Off(v.At.ToInstant(), at));
                int minute = house.Calendar.MinuteOf(at), from = house.Calendar.MinuteOf(input.Period.End);
                if (yesterday is not null && !house.Waterings.Any(w => w.StartMinute >= from && w.StartMinute <= minute && (w.Bench.Length == 0 || w.Bench == bench.Bench)))
                {
                    yield return new(run.Seed, house.Options.Id, week, bench.Bench, forecast.Level, yesterday.Level, Truth(house, bench.Bench, minute), pots.Drying!.Noise);
                }
            }
        }
    }

    private static double Truth(HouseRun house, string bench, int minute)
        => Enumerable.Range(0, 2 * PotBench.PotsABench).Where(pot => PotBench.BenchOf(pot) == bench).Average(pot => PotBench.Level(house.PotMl[minute / 60][pot]));

    private static Duration Off(Instant visit, Instant target)
    {
        Duration off = target - Duration.FromHours(24) - visit;
        return off < Duration.Zero ? -off : off;
    }
}
