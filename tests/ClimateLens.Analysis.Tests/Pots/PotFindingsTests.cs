using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Pots;

/// <summary>Each rule on pots has a case that fires and a near miss that does not.</summary>
public sealed class PotFindingsTests
{
    private static readonly SyntheticHouse House = CheckedHouse.Dry;

    [Theory]
    [InlineData(1.0, null, true)]
    [InlineData(1.5, null, false)]
    [InlineData(2.5, "severe flagging", true)]
    [InlineData(2.5, "Wilted", true)]
    [InlineData(2.5, "flagging", false)]
    public void DryPots_LevelOneOrHangingLeaves_IsFound(double level, string? leaves, bool found)
    {
        SyntheticHouse house = House.Check(1, 12, 0, "A", "3", level, "KL", leaves is null ? [] : [("leafState", leaves)]);
        Assert.Equal(found, house.Finds("dryPots") is not null);
    }

    [Theory]
    [InlineData(4.5, 20, true)]
    [InlineData(4.4, 20, false)]
    [InlineData(4.5, 25, false)]
    public void DryDown_SaturatedWithinADay_IsToldAndWatched(double level, int hoursLater, bool saturated)
    {
        int hour = 12 + hoursLater;
        Review review = House.Check(1, 12, 0, "A", "3", 1).Water(1, 13, "A").Check(1 + (hour / 24), hour % 24, 0, "A", "3", level).Review();
        DryDown dry = Assert.Single(review.Pots!.DryDowns);
        Assert.Equal(1, dry.HoursToWatering);
        Assert.Equal(saturated, dry.SaturatedAfter ?? false);
        Assert.Equal(saturated ? "watch" : "quiet", review.Roots!.Signal);
        Assert.Equal(saturated, review.Findings.Any(f => f.Id == "rootWeather"));
    }

    [Fact]
    public void DryDown_NotLookedAtAgain_IsNotKnownAfter()
    {
        DryDown dry = Assert.Single(House.Check(1, 12, 0, "A", "3", 1).Review().Pots!.DryDowns);
        Assert.Null(dry.SaturatedAfter);
        Assert.Null(dry.HoursToWatering);
    }

    [Theory]
    [InlineData(2.0, 4.0, true)]
    [InlineData(2.0, 3.9, false)]
    [InlineData(4.5, 2.5, true)]
    public void MoistureJumps_TwoLevelsFromTheDayBefore_AreFound(double one, double next, bool found)
    {
        SyntheticHouse house = House.Check(1, 8, 0, "A", "3", one).Check(2, 9, 0, "A", "3", next);
        Assert.Equal(found, house.Finds("moistureJumps") is not null);
    }

    [Fact]
    public void MoistureJumps_WithinOneDayOrTwoDaysLater_AreNone()
        => Assert.Null(House.Check(1, 8, 0, "A", "3", 2).Check(1, 14, 0, "A", "3", 4.5).Check(4, 8, 0, "A", "3", 2).Finds("moistureJumps"));

    [Theory]
    [InlineData(2, true)]
    [InlineData(1, false)]
    public void WetAtDusk_AQuarterOfLateChecks_IsFound(int wet, bool found)
    {
        SyntheticHouse house = House;
        for (int pot = 0; pot < 8; pot++)
        {
            house = house.Check(1, 14, pot, "A", $"{pot}", pot < wet ? 4 : 3);
        }

        Assert.Equal(found, house.Finds("wetAtDusk") is not null);
    }

    [Fact]
    public void WetAtDusk_InTheMorning_IsNone()
    {
        SyntheticHouse house = House;
        for (int pot = 0; pot < 8; pot++)
        {
            house = house.Check(1, 8, pot, "A", $"{pot}", 4.5);
        }

        Assert.Null(house.Finds("wetAtDusk"));
    }

    [Theory]
    [InlineData(3.5, true)]
    [InlineData(3.4, false)]
    public void WateredTooWet_TwiceNearTheTopOfTheBand_IsFound(double level, bool found)
    {
        SyntheticHouse house = House.Check(1, 8, 0, "A", "3", level).Water(1, 10, "A").Check(3, 8, 0, "A", "3", level).Water(3, 10, "A");
        Assert.Equal(found, house.Finds("wateredTooWet") is not null);
        Assert.Equal(2, house.Review().Pots!.BeforeWaterings.Length);
    }

    [Fact]
    public void BeforeWaterings_CheckTooLongAgoOrOfAnotherBench_IsNotJudged()
        => Assert.Empty(House.Check(1, 3, 0, "A", "3", 4).Check(1, 8, 0, "B", "3", 4).Water(1, 10, "A").Review().Pots!.BeforeWaterings);

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0, false)]
    public void GradersApart_HalfALevelOverManyPots_IsFound(double bias, bool found)
    {
        SyntheticHouse house = House;
        for (int i = 0; i < 16; i++)
        {
            double level = 2 + (0.5 * (i % 4));
            house = house.Check(i / 8, 8, i % 8, "A", $"{i}", level).Check(i / 8, 8, 20 + (i % 8), "A", $"{i}", level + bias + (i % 5 == 0 ? 0.5 : 0), "TS");
        }

        Assert.Equal(found, house.Finds("gradersApart") is not null);
        GraderPair pair = Assert.Single(house.Review().Pots!.Agreement.Pairs);
        Assert.Equal((16, 2), (pair.Pots, pair.Rounds));
        Assert.Equal(16, pair.Confusion.Sum(c => c.Pots));
        Assert.InRange(pair.KappaQuadratic!.Value, 0.3, 1);
    }

    [Fact]
    public void Graders_MoreThanAnHourApartOrOtherPots_AreNoPair()
    {
        AgreementReport agreement = House.Check(1, 8, 0, "A", "1", 3).Check(1, 9, 1, "A", "1", 3, "TS").Check(1, 8, 30, "B", "1", 3, "TS").Review().Pots!.Agreement;
        Assert.Empty(agreement.Pairs);
        Assert.Equal(23, agreement.PotsNeeded); // by hand: (1.960 + 1.282)² · 0.49/0.25 + 1.96²/2 = 22.5
    }

    [Fact]
    public void GradersNotKnown_TwoPeopleWithoutCommonPots_AskForARound()
    {
        SyntheticHouse one = House.Check(1, 8, 0, "A", "1", 3);
        Assert.Contains("23 pots", one.Check(1, 12, 0, "A", "2", 3, "TS").Finds("gradersNotKnown")!.Action, StringComparison.Ordinal);
        Assert.Null(one.Check(1, 12, 0, "A", "2", 3).Finds("gradersNotKnown"));
    }

    [Theory]
    [InlineData(17, true)]
    [InlineData(16, false)]
    public void RoundsMissed_UnderFourFifths_IsFound(int walked, bool met)
    {
        int[] hours = [8, 11, 15];
        SyntheticHouse house = House;
        for (int round = 0; round < walked; round++)
        {
            house = house.Check(round / 3, hours[round % 3], 0, "A", "1", 3);
        }

        Assert.Equal(!met, house.Finds("roundsMissed") is not null);
        Assert.Equal(walked, house.Review().Pots!.Days.Sum(d => d.Walked));
    }

    [Fact]
    public void RoundsMissed_WeekendNotDue_CountsTheWeekOnly()
    {
        SyntheticHouse house = House.With(new PotRules { WeekendRounds = 0, Rounds = [new("once", new LocalTime(7, 0), new LocalTime(9, 0))] });
        for (int day = 0; day < 5; day++)
        {
            house = house.Check(day, 8, 0, "A", "1", 3);
        }

        Assert.Null(house.Finds("roundsMissed"));
        Assert.Equal((5, 5, 0), (house.Review().Pots!.Rounds[0].WeekdaysDue, house.Review().Pots!.Rounds[0].WeekdaysWalked, house.Review().Pots!.Rounds[0].WeekendDue));
    }

    [Theory]
    [InlineData(48, true)]
    [InlineData(47, false)]
    public void Roots_SaturatedForTwoDays_IsAReason(int hours, bool found)
    {
        int end = 8 + hours;
        Review review = House.Check(1, 8, 0, "A", "1", 4.5).Check(2, 8, 0, "A", "1", 5).Check(1 + (end / 24), end % 24, 0, "A", "1", 4.5).Review();
        Assert.Equal(found, review.Roots!.Reasons.Any(r => r.Id == "longSaturation"));
    }

    [Theory]
    [InlineData(25.1, 3, "warmMedium")]
    [InlineData(25, 3, null)]
    [InlineData(19.9, 4, "coolWetMedium")]
    [InlineData(19.9, 3.5, null)]
    [InlineData(20, 4, null)]
    public void Roots_MediumBeyondALimitInThreeChecks_IsAReason(double mediumC, double level, string? reason)
    {
        SyntheticHouse house = House;
        for (int day = 1; day < 4; day++)
        {
            house = house.Check(day, 8, 0, "A", "1", level, "KL", ("mediumTemperature", FormattableString.Invariant($"{mediumC}")));
        }

        Assert.Equal(reason, house.Review().Roots!.Reasons.SingleOrDefault()?.Id);
    }

    [Fact]
    public void Roots_TwoSigns_SayAct_AndFloodsAreToldOnly()
    {
        SyntheticHouse soaked = House.Check(1, 12, 0, "A", "3", 1).Check(1, 20, 0, "A", "3", 5).Check(2, 20, 0, "A", "3", 5).Check(3, 20, 0, "A", "3", 5);
        Review review = soaked.Water(2, 9, "B", "floodFloor").Review();
        Assert.Equal("act", review.Roots!.Signal);
        Assert.Equal(["longSaturation", "dryThenSaturated", "recirculatedWater"], review.Roots.Reasons.Select(r => r.Id));
        Assert.Equal("quiet", House.Check(1, 12, 0, "A", "3", 3).Water(2, 9, "B", "floodFloor").Review().Roots!.Signal);
    }

    [Fact]
    public void Weights_OfTheNurseryFile_GiveLevelsAndHoldGraders()
    {
        SyntheticHouse house = House.With(new PotRules { DryWeightG = 620, SoakedWeightG = 1180 });
        for (int i = 0; i < 4; i++)
        {
            house = house.Check(1, 8, i, "A", $"{i}", 3.5, "KL", ("weight", "900")); // f = 0.5, level 3
        }

        PotReport pots = house.Check(1, 9, 0, "A", "9", null, "KL", ("weight", "1240")).Review().Pots!;
        GraderAgainstWeights against = Assert.Single(pots.Agreement.AgainstWeights);
        Assert.Equal(("KL", 4, 0.5), (against.Grader, against.Pots, against.Bias!.Value));
        Assert.Equal(5, pots.Band!.Checks);
        Assert.Equal(1, pots.Band.Wetter); // f = 1.11, level 5
    }

    [Fact]
    public void NoPotChecks_NothingIsSaidAndWhyIsTold()
    {
        Review review = House.Review();
        Assert.Null(review.Pots);
        Assert.Null(review.Roots);
        Assert.Contains(review.NotKnown, u => u.What == "pots");
        Assert.Contains(review.NotKnown, u => u.What == "roots");
    }
}
