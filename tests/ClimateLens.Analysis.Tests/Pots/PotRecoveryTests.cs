using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.Nursery;
using ClimateLens.Science.Agreement;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Analysis.Tests.Pots;

/// <summary>Known graders and known pots of the simulator, recovered from checks alone.</summary>
public sealed class PotRecoveryTests
{
    private const int Seeds = 50;

    /// <summary>Two of the simulator's people: KL exact within 0.2 levels, TS 0.45 too wet within 0.45.</summary>
    [Fact]
    public void Kappa_KnownGraders_LiesInItsRangeIn90PercentOfSeeds()
    {
        NurseryRun run = NurseryRun.Of(1);
        HouseInput bare = SimulatedPots.Of(run, run.HouseOne, "2025-W44");
        GraderPair? Pair(int seed) => GraderAgreement.Of(new PotData(Alignment.Align(SimulatedPots.WithChecks(bare, run with { Seed = (ulong)seed }, run.HouseOne)), null)).Pairs.SingleOrDefault(p => p is { First: "KL", Second: "TS" });
        double truth = WeightedKappa.Of(
            AgreementTable.OfPairs(9, Enumerable.Range(1000, 150).Select(Pair).OfType<GraderPair>().SelectMany(p => p.Confusion).SelectMany(c => Enumerable.Repeat(((int)(2 * (c.First - 1)), (int)(2 * (c.Second - 1))), c.Pots))),
            KappaWeights.Quadratic);
        GraderPair[] pairs = [.. Enumerable.Range(1, 200).Select(Pair).OfType<GraderPair>().Where(p => p.KappaQuadratic is not null).Take(Seeds)];
        int held = pairs.Count(p => p.KappaQuadratic is { } k && k.Low <= truth && truth <= k.High);
        int biased = pairs.Count(p => p.Bias is { } b && b.Low <= -0.45 && -0.45 <= b.High);
        Assert.Equal(Seeds, pairs.Length);
        Assert.True(held >= 0.9 * Seeds, $"kappa {truth:F3} in {held} of {Seeds} ranges; bias in {biased}");
        Assert.All(pairs, p => Assert.InRange(p.Bias!.Value, -0.8, -0.1)); // grades are to half levels and end at 5, so the bias seen is a little less
    }

    /// <summary>Days after the week, which no forecast has seen: better than "same as yesterday", or not shown.</summary>
    [Fact]
    public void Forecast_DaysNotSeen_BeatsSameAsYesterday()
    {
        RecoveredLevel[] levels = [.. Enumerable.Range(1, 6).SelectMany(seed => PotRecovery.Of((ulong)seed))];
        double miss = Rms(levels.Select(l => l.Forecast.Value - l.Truth)), yesterday = Rms(levels.Select(l => l.Yesterday - l.Truth));
        double held = levels.Count(l => l.Forecast.Low <= l.Truth && l.Truth <= l.Forecast.High) / (double)levels.Length;
        string told = FormattableString.Invariant($"{levels.Length} levels: miss {miss:F3}, same as yesterday {yesterday:F3}; {held:P0} in the range");
        Assert.True(levels.Length >= 20, told);
        Assert.True(miss < yesterday, told);
        Assert.True(held >= 0.85, told);
    }

    private static double Rms(IEnumerable<double> misses) => Math.Sqrt(misses.Average(m => m * m));
}
