using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Scouting;

public sealed class ScoutingTests
{
    private const int LastWeek = 45;

    /// <summary>House weeks of 2025, each damper than the one before: the last with all the others as its earlier weeks.</summary>
    private static HouseInput House(int weeks, Func<int, int?> plants, Func<SyntheticHouse, SyntheticHouse>? also = null)
    {
        SyntheticHouse last = Week(LastWeek, weeks - 1);
        for (int i = 0; i < weeks; i++)
        {
            if (plants(i) is int count)
            {
                last = Counted(last, i - weeks + 1, 2, "1", "grey mould", count);
            }
        }

        last = also?.Invoke(last) ?? last;
        return last.Input with { Earlier = [.. Enumerable.Range(0, weeks - 1).Select(i => Week(LastWeek - weeks + 1 + i, i).Input)] };
    }

    private static SyntheticHouse Week(int number, int damper)
        => SyntheticHouse.Week($"2025-W{number}").WithAir(t => SyntheticHouse.AutumnAir(t) is Air a ? new Air(a.TemperatureC, a.RelativeHumidityPct - 6 + damper) : default);

    /// <summary>Adds a count on the third day of a week, counted from the last.</summary>
    private static SyntheticHouse Counted(SyntheticHouse house, int week, int day, string bench, string symptom, int count)
        => house.WithRecord(RecordKind.Scouting, new IsoWeek(2025, LastWeek).Monday.PlusDays((7 * week) + day).At(new LocalTime(9, 0)), ("bench", bench), ("symptom", symptom), ("count", $"{count}"));

    private static ScoutingReport Report(HouseInput input) => ReviewPipeline.Run(input).Scouting!;

    [Fact]
    public void CountsThatRiseAfterDamperWeeks_RankTogetherWithTheWeekBefore()
    {
        ScoutingReport report = Report(House(9, i => i == 0 ? null : i));
        Assert.Equal(9, report.Weeks.Length);
        Assert.Equal("2025-W45", report.Weeks[^1].Week);
        int[] hours = [.. report.Weeks.Select(w => w.RiskHours!.Value)];
        Assert.True(hours[^1] > hours[0] + 20, string.Join(' ', hours));
        ScoutedSymptom mould = Assert.Single(report.Symptoms);
        Assert.Equal(("grey mould", 8), (mould.Symptom, mould.Pairs));
        Assert.Null(mould.Plants[0]);
        Assert.True(mould.Correlation!.Value > 0.9 && mould.ChanceShare < 0.02, $"{mould}");
    }

    [Fact]
    public void CountsThatFall_RankTheOtherWay() => Assert.True(Report(House(9, i => 9 - i)).Symptoms[0].Correlation!.Value < -0.9);

    /// <summary>Plants after the damp week alone: paired with their own week, they would stand by the dry one.</summary>
    [Fact]
    public void Count_IsPairedWithTheWeekBeforeItsOwn()
    {
        HouseInput input = House(8, i => i == 5 ? 20 : i == 0 ? null : 0);
        HouseInput[] weeks = [.. input.Earlier.Select((week, i) => Week(LastWeek - 7 + i, i == 4 ? 8 : 0).Input)];
        ScoutedSymptom mould = Report(input with { Earlier = [.. weeks] }).Symptoms[0];
        Assert.Equal(1, mould.Correlation!.Value, 1e-9);
    }

    [Theory]
    [InlineData(6, false)] // the first week has no week before: five pairs
    [InlineData(7, true)]
    public void FewPairs_CarryNoCorrelation(int weeks, bool told)
    {
        ScoutedSymptom mould = Report(House(weeks, i => i)).Symptoms[0];
        Assert.Equal(weeks - 1, mould.Pairs);
        Assert.Equal(told, mould.Correlation is not null);
        Assert.Equal(told, mould.ChanceShare is not null);
    }

    [Fact]
    public void CountsThatNeverChange_CarryNoCorrelation() => Assert.Null(Report(House(8, _ => 0)).Symptoms[0].Correlation);

    [Fact]
    public void BenchesAddUp_AndABenchWalkedTwiceCountsOnceByItsLast()
    {
        ScoutingReport report = Report(House(2, i => i == 1 ? 3 : null, house => Counted(Counted(Counted(house, 0, 4, "1", "Grey Mould ", 5), 0, 1, "2", "grey mould", 4), 0, 2, "2", "mildew", 1)));
        Assert.Equal(["grey mould", "mildew"], report.Symptoms.Select(s => s.Symptom));
        Assert.Equal(9, report.Symptoms[0].Plants[^1]);
        Assert.Equal(1, report.Symptoms[1].Plants[^1]);
    }

    [Theory]
    [InlineData("2025-W41")]
    [InlineData("2025-W43")]
    public void RiskHours_OfAnEarlierWeek_AreNearThoseOfItsOwnReview(string week)
    {
        HouseInput earlier = SyntheticHouse.Week(week).WithAir(SyntheticHouse.ChangingAir).Input;
        SyntheticHouse last = Counted(SyntheticHouse.Week("2025-W45").WithAir(SyntheticHouse.ChangingAir), 0, 2, "1", "grey mould", 1);
        ScoutingReport report = Report(last.Input with { Earlier = [earlier] });
        Assert.Equal(week, report.Weeks[0].Week);
        Assert.InRange(report.Weeks[0].RiskHours!.Value - ReviewPipeline.Run(earlier).RiskHours!.Value, -6, 6); // an eighth of the draws
        Assert.Equal((int)ReviewPipeline.Run(last.Input).RiskHours!.Value, report.Weeks[1].RiskHours);
    }

    [Fact]
    public void WeekWithoutAir_HasNoHours_AndIsNoPair()
    {
        HouseInput input = House(8, i => i);
        ScoutingReport report = Report(input with { Earlier = input.Earlier.SetItem(3, input.Earlier[3] with { Batches = [] }) });
        Assert.Null(report.Weeks[3].RiskHours);
        Assert.Equal(6, report.Symptoms[0].Pairs);
    }

    [Fact]
    public void WeeksOfTheCropBefore_AreLeftOut()
    {
        HouseInput input = House(8, i => i);
        HouseInput replanted = input with { House = input.House with { Crops = [new CropSettings("cyclamen", new LocalDate(2025, 10, 15), null, null, 13, [])] } };
        Assert.Equal("2025-W42", Report(replanted).Weeks[0].Week); // the week of 13 to 19 October
    }

    [Fact]
    public void NothingCounted_IsNotKnown()
    {
        Review review = ReviewPipeline.Run(Week(LastWeek, 0).Input);
        Assert.Null(review.Scouting);
        Assert.Contains(review.NotKnown, u => u.What == "scouting");
    }

    [Fact]
    public void Fingerprint_OfAnotherEarlierWeek_IsAnother()
    {
        HouseInput input = House(3, i => i);
        Assert.NotEqual(InputFingerprint.Of(input), InputFingerprint.Of(input with { Earlier = input.Earlier.SetItem(0, Week(43, 5).Input) }));
    }
}
