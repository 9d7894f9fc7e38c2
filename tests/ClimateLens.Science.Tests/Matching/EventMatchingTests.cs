using ClimateLens.Science.Matching;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Matching;

public class EventMatchingTests
{
    private static readonly MatchDesign NoPlacebo = MadeUpHouse.Design with { PlaceboSets = 0 };

    /// <summary>Difference of differences: one event, one like.</summary>
    [Fact]
    public void Effect_OneEventAndOneLike_IsTheDifferenceOfDifferences()
    {
        CheckRow row = CheckRow.Of("stats_checks").Single(r => r.Quantity == "difference_in_differences");
        double[] outcome = [row.Input("control_pre"), row.Input("control_post"), row.Input("treated_pre"), row.Input("treated_post")];
        MatchDesign design = new() { StepHours = 1, BeforeHours = 1, AfterHours = 1, WashoutHours = 1, CandidateHours = 1, PlaceboSets = 0 };
        MatchedEffect effect = EventMatching.Of(outcome, [false, false, false, true], [3], [], design);
        Assert.Equal(row.Expected, effect.Effect.Value, row.Tolerance);
        Assert.Equal([1], effect.Events.Single().Stretches);
        Assert.Equal((0, row.Expected), (effect.Curve[0].Value, effect.Curve[1].Value));
        Assert.True(double.IsNaN(effect.Effect.Low), "One event carries no range.");
    }

    [Fact]
    public void Effect_KnownRise_IsFoundAndItsRangeHoldsIt()
    {
        int held = 0;
        double sum = 0, truth = 0;
        for (ulong seed = 1; seed <= 20; seed++)
        {
            var house = new MadeUpHouse(seed, 2.5, (day, _) => day % 3 != 0);
            MatchedEffect effect = house.Effect(NoPlacebo);
            Assert.True(effect.Matched >= 8, $"{effect.Matched}");
            sum += effect.Effect.Value / 20;
            truth += house.Truth / 20;
            held += effect.Effect.Low <= house.Truth && effect.Effect.High >= house.Truth ? 1 : 0;
        }

        Assert.Equal(truth, sum, 0.1);
        Assert.InRange(held, 15, 20); // aimed at 18
    }

    [Fact]
    public void Effect_NoRise_IsAboutNoneAndThePlaceboSaysHowOftenItErrs()
    {
        MatchedEffect effect = new MadeUpHouse(3, 0, (day, _) => day % 3 != 0).Effect();
        Assert.Equal(0, effect.Effect.Value, 0.35);
        Assert.Equal(100, effect.Placebo.Sets);
        Assert.InRange(effect.Placebo.RejectionRate, 0, 0.25);
        Assert.Equal(0, effect.Placebo.MeanEffect, 0.3);
    }

    /// <summary>A comparison that cannot tell sunny days apart takes the sun for the water; its placebo over the same days does not see that, the covariate does.</summary>
    [Fact]
    public void Effect_WateredOnSunnyDaysOnly_NeedsTheSunToBeRight()
    {
        double with = 0, without = 0, truth = 0, before = 0, after = 0;
        for (ulong seed = 1; seed <= 10; seed++)
        {
            var house = new MadeUpHouse(seed, 1, (day, bright) => day % 2 == 0 && bright > 0.35);
            MatchedEffect sunny = house.Effect(NoPlacebo);
            with += sunny.Effect.Value / 10;
            without += EventMatching.Of(house.Humidity, house.Treated, house.Starts, [house.Covariates[0]], NoPlacebo).Effect.Value / 10;
            truth += house.Truth / 10;
            CovariateBalance sun = sunny.Balance.Single(b => b.Name == "sun");
            (before, after) = (before + (sun.Before / 10), after + (sun.After / 10));
        }

        Assert.True(Math.Abs(with - truth) < Math.Abs(without - truth) / 2, $"{with} {without} {truth}");
        Assert.True(before > 0.5 && Math.Abs(after) < 0.25, $"{before} {after}");
    }

    [Fact]
    public void Events_WateredEveryDay_HaveNothingToCompareWith()
    {
        MatchedEffect effect = new MadeUpHouse(1, 2, (_, _) => true).Effect();
        Assert.True(double.IsNaN(effect.Effect.Value));
        Assert.Equal(0, effect.Matched);
        Assert.Contains(effect.Events, e => e.Outcome == MatchOutcome.NothingAlike);
        Assert.True(double.IsNaN(effect.Placebo.RejectionRate));
    }

    [Fact]
    public void Events_TooNearTheLastOrTheEnds_AreLeftOutAndSaySo()
    {
        var house = new MadeUpHouse(1, 2, (day, _) => day == 10);
        int start = house.Starts[0];
        int[] starts = [0, start, start + 4, MadeUpHouse.Steps - 2];
        foreach (int step in starts)
        {
            house.Treated[step] = true;
        }

        MatchedEffect effect = EventMatching.Of(house.Humidity, house.Treated, starts, house.Covariates, NoPlacebo);
        Assert.Equal(
            [MatchOutcome.NotMeasured, MatchOutcome.Matched, MatchOutcome.FollowsAnother, MatchOutcome.NotMeasured], effect.Events.Select(e => e.Outcome));
    }

    [Fact]
    public void Stretches_AreUntreatedAndShareNoStep()
    {
        var house = new MadeUpHouse(5, 2, (day, _) => day % 2 == 0);
        foreach (MatchedEvent e in house.Effect(NoPlacebo).Events)
        {
            Assert.All(e.Stretches, s => Assert.DoesNotContain(true, house.Treated[Math.Max(0, s - 12)..(s + MadeUpHouse.After)]));
            int[] all = [.. e.Stretches.Append(e.Start).Order()];
            Assert.All(all.Zip(all.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 14));
        }
    }

    [Fact]
    public void Covariates_RarelyKnownOrUnvarying_AreLeftOutByName()
    {
        var house = new MadeUpHouse(2, 2, (day, _) => day % 3 != 0);
        double[] gone = new double[MadeUpHouse.Steps], still = new double[MadeUpHouse.Steps];
        Array.Fill(gone, double.NaN, 0, MadeUpHouse.Steps * 3 / 4);
        Array.Fill(still, 7);
        MatchedEffect with = EventMatching.Of(
            house.Humidity, house.Treated, house.Starts,
            [.. house.Covariates, new("wind", CovariateKind.Before, gone), new("screen", CovariateKind.Before, still)], NoPlacebo);
        Assert.Equal(["wind", "screen"], with.LeftOut);
        Assert.Equal(house.Effect(NoPlacebo).Effect, with.Effect);
        Assert.Equal(["hour", "sun", "outside humidity"], with.Balance.Select(b => b.Name));
    }

    [Fact]
    public void Units_DoNotMatter()
    {
        var house = new MadeUpHouse(4, 2, (day, _) => day % 3 != 0);
        MatchedEffect plain = house.Effect(NoPlacebo);
        MatchCovariate[] scaled = [.. house.Covariates.Select(c => c.Kind == CovariateKind.HourOfDay
            ? c
            : c with { Values = Array.ConvertAll(c.Values.ToArray(), v => 32 + (1.8 * v)) })];
        MatchedEffect other = EventMatching.Of(
            Array.ConvertAll(house.Humidity, v => 1000 * v), house.Treated, house.Starts, scaled, NoPlacebo);
        Assert.Equal(1000 * plain.Effect.Value, other.Effect.Value, 1e-6);
        Assert.Equal(plain.Events.Select(e => e.Stretches), other.Events.Select(e => e.Stretches));
    }

    [Fact]
    public void Input_Impossible_Throws()
    {
        var house = new MadeUpHouse(4, 2, (day, _) => day % 3 != 0);
        Assert.Throws<ArgumentException>(() => EventMatching.Of(house.Humidity, new bool[3], house.Starts, [], NoPlacebo));
        Assert.Throws<ArgumentException>(() => EventMatching.Of(house.Humidity, house.Treated, [9, 4], [], NoPlacebo));
        Assert.Throws<ArgumentOutOfRangeException>(() => house.Effect(NoPlacebo with { Neighbours = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => house.Effect(NoPlacebo with { WashoutHours = 0.5 }));
    }
}
