using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Truth;
using ClimateLens.Nursery;
using ClimateLens.Science.Statistics;

namespace ClimateLens.TestKit.Simulated;

/// <summary>Risk hours as the simulator knows them and as a review of its logs tells them.</summary>
/// <param name="Seed">Seed of the nursery.</param>
/// <param name="House">House id.</param>
/// <param name="Week">ISO week.</param>
/// <param name="Truth">Risk hours by the simulator's own leaves, film and canopy air.</param>
/// <param name="Found">What the review says.</param>
public sealed record RecoveredWeek(ulong Seed, string House, string Week, int Truth, Estimate Found)
{
    /// <summary>Whether the value is within 15 % or two hours of the truth.</summary>
    public bool IsNear => Math.Abs(Found.Value - Truth) <= Math.Max(2, 0.15 * Truth);

    /// <summary>Whether the range holds the truth.</summary>
    public bool Covers => Found.Low <= Truth && Truth <= Found.High;
}

/// <summary>Reviews simulated weeks whose sensors are off by amounts drawn from their accuracies, and holds the risk hours to the truth.</summary>
public static class RiskRecovery
{
    private const double AccuracyK = 0.5, AccuracyPct = 3;

    /// <summary>All weeks of both houses of one seed.</summary>
    /// <param name="seed">Seed of weather, habits, noise and biases.</param>
    /// <param name="canopySensor">Whether a sensor hangs in the canopy.</param>
    /// <param name="biased">Whether sensors are off by amounts drawn from their accuracies; else they drift and are noisy only.</param>
    /// <param name="drawnHouses">Whether the houses differ from seed to seed in what nobody logs; else all are those of the sample logs.</param>
    /// <param name="weeks">ISO weeks.</param>
    public static IEnumerable<RecoveredWeek> Of(ulong seed, bool canopySensor, bool biased, bool drawnHouses, IReadOnlyList<string> weeks)
    {
        NurseryRun run = drawnHouses ? NurseryRun.Of(seed, house => HouseNature.Drawn(seed, house)) : NurseryRun.Of(seed);
        SeededRandom random = new(seed * 7919);
        foreach (HouseRun plain in run.Houses)
        {
            double Bias(double accuracy) => (biased ? accuracy : 0) * random.NextUniform(-1, 1);
            HouseRun house = plain with { Options = plain.Options with { TemperatureBiasK = Bias(AccuracyK), HumidityBiasPct = Bias(AccuracyPct) } };
            (double, double) inCanopy = (Bias(AccuracyK), Bias(AccuracyPct));
            foreach (string week in weeks)
            {
                HouseInput input = SimulatedWeek.Of(run, house, week, canopySensor ? inCanopy : null);
                Review review = ReviewPipeline.Run(input);
                int truth = TrueRisk.Count(house, house.Calendar.MinuteOf(input.Period.Start), house.Calendar.MinuteOf(input.Period.End));
                yield return new RecoveredWeek(seed, house.Options.Id, week, truth, review.RiskHours!);
            }
        }
    }
}
