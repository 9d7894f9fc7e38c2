using ClimateLens.Science.Agreement;
using ClimateLens.Science.Pots;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Agreement;

public class GroupedKappaTests
{
    private const int Seeds = 50;

    [Theory]
    [InlineData(4, 8, 0.0)]
    [InlineData(10, 8, 0.45)]
    [InlineData(25, 4, 0.45)]
    public void Of_KnownGraders_HoldsTheirKappaIn90PercentOfSeeds(int rounds, int pots, double bias)
    {
        double truth = Draw(new SeededRandom(99), 6000, pots, bias).Value;
        int held = 0;
        for (int seed = 1; seed <= Seeds; seed++)
        {
            Interval range = Draw(new SeededRandom((ulong)seed), rounds, pots, bias);
            held += range.Low <= truth && truth <= range.High ? 1 : 0;
        }

        Assert.True(held >= 0.9 * Seeds, $"{held} of {Seeds} ranges hold {truth:F3}");
    }

    [Fact]
    public void Of_SixRoundsManySeeds_HoldsAboutNineTenths()
    {
        double truth = Draw(new SeededRandom(99), 6000, 8, 0).Value;
        int held = Enumerable.Range(1, 300).Count(seed => Draw(new SeededRandom((ulong)seed), 6, 8, 0) is var range && range.Low <= truth && truth <= range.High);
        Assert.InRange(held / 300.0, 0.86, 0.95); // 0.9 less and more than two standard errors of 300 seeds
    }

    [Fact]
    public void Of_MorePairs_NarrowsTheRange()
    {
        Interval few = Draw(new SeededRandom(3), 6, 8, 0.2), many = Draw(new SeededRandom(3), 60, 8, 0.2);
        Assert.True(many.High - many.Low < (few.High - few.Low) / 2, $"{few} {many}");
    }

    [Fact]
    public void Of_FewPairsOrNoDifference_HasNoRange()
    {
        Assert.True(double.IsNaN(GroupedKappa.Of(9, [.. Enumerable.Range(0, 7).Select(i => (i, i, i))], KappaWeights.Linear, 0.9).Low));
        Interval alike = GroupedKappa.Of(9, [.. Enumerable.Range(0, 9).Select(i => (i, i, i))], KappaWeights.Linear, 0.9);
        Assert.Equal(1, alike.Value);
        Assert.True(double.IsNaN(alike.Low));
        Assert.True(double.IsNaN(GroupedKappa.Of(9, [], KappaWeights.Linear, 0.9).Value));
    }

    /// <summary>Rounds of pots that share the day's moisture, graded by one exact and one biased person, to half levels.</summary>
    private static Interval Draw(SeededRandom random, int rounds, int pots, double bias)
    {
        List<(int, int, int)> pairs = [];
        for (int round = 0; round < rounds; round++)
        {
            double day = random.NextUniform(1.8, 4.2);
            for (int pot = 0; pot < pots; pot++)
            {
                double level = day + (0.4 * random.NextNormal());
                pairs.Add((Grade(level + (0.2 * random.NextNormal())), Grade(level + bias + (0.45 * random.NextNormal())), round));
            }
        }

        return rounds > 1000
            ? new(WeightedKappa.Of(AgreementTable.OfPairs(9, pairs.Select(p => (p.Item1, p.Item2))), KappaWeights.Quadratic), double.NaN, double.NaN)
            : GroupedKappa.Of(9, pairs, KappaWeights.Quadratic, 0.9);
    }

    private static int Grade(double level) => MoistureScale.HalfLevelOf(Math.Clamp(level, 1, 5));

    private static readonly (int First, int Second, int Round)[] FourRounds =
    [
        (0, 0, 1), (1, 1, 1), (2, 2, 1), (3, 3, 1), (0, 1, 2), (1, 1, 2), (2, 3, 2), (3, 2, 2),
        (0, 3, 3), (3, 0, 3), (1, 3, 3), (2, 2, 3), (1, 1, 4), (2, 2, 4), (3, 3, 4), (0, 0, 4),
    ];

    /// <summary>Worked out by a separate program in another language: kappa, delete-one-round jackknife (0.51854, more than the 0.26935 of single pairs), Fisher's transform, t at 0.95 with three degrees of freedom.</summary>
    [Fact]
    public void Of_FourRounds_IsTheRangeOfASeparateProgram()
    {
        Interval range = GroupedKappa.Of(4, FourRounds, KappaWeights.Quadratic, 0.9);
        Assert.Equal(0.375, range.Value, 9);
        Assert.Equal(-0.8470032, range.Low, 5);
        Assert.Equal(0.9663466, range.High, 5);
    }

    [Fact]
    public void Of_OneRound_CountsEachPairForItself()
        => Assert.Equal(GroupedKappa.Of(4, [.. FourRounds.Select((p, i) => (p.First, p.Second, i))], KappaWeights.Linear, 0.9), GroupedKappa.Of(4, [.. FourRounds.Select(p => (p.First, p.Second, 7))], KappaWeights.Linear, 0.9));

    [Fact]
    public void Of_FewPairs_HasNoRange()
    {
        Assert.True(double.IsFinite(GroupedKappa.Of(4, FourRounds[..8], KappaWeights.Linear, 0.9).Low));
        Interval fewer = GroupedKappa.Of(4, FourRounds[..7], KappaWeights.Linear, 0.9);
        Assert.True(double.IsFinite(fewer.Value) && double.IsNaN(fewer.Low));
        Assert.True(double.IsNaN(GroupedKappa.Of(4, [], KappaWeights.Linear, 0.9).Value));
    }
}
