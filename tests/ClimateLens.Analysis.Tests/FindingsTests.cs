using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class FindingsTests
{
    /// <summary>Dry by night and day: nothing to find.</summary>
    private static Air DryAir(Instant at) => new(18 + (2 * Math.Sin(at.ToUnixTimeSeconds() / 9000.0)), 65 + (8 * Math.Sin(at.ToUnixTimeSeconds() / 7000.0)));

    private static readonly SyntheticHouse Dry = SyntheticHouse.Week("2025-W42").WithAir(DryAir);

    [Fact]
    public void Rank_DryWeek_IsCalm()
    {
        Finding finding = Assert.Single(ReviewPipeline.Run(Dry.Input).Findings);
        Assert.Equal(("calm", 1), (finding.Id, finding.Rank));
    }

    [Fact]
    public void Rank_LateBoom_NamesDaysAndWhatCameWithIt()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir)
            .WithWatering(new LocalDateTime(2025, 10, 13, 15, 30), ("minutes", "40"), ("method", "boom"))
            .WithWatering(new LocalDateTime(2025, 10, 14, 9, 0), ("minutes", "40"), ("method", "boom"))
            .WithWatering(new LocalDateTime(2025, 10, 16, 16, 0), ("minutes", "40"), ("method", "boom"))
            .WithWatering(new LocalDateTime(2025, 10, 16, 16, 0), ("minutes", "40"), ("method", "drip"));
        Review review = ReviewPipeline.Run(house.Input);
        Finding finding = review.Findings.Single(f => f.Id == "lateOverheadWatering");
        Assert.StartsWith("2 of 3 waterings over the leaves ended after the cut-off, less than 4 hours before sunset (", finding.Text, StringComparison.Ordinal);
        Assert.Contains("(Mon 13 Oct and Thu 16 Oct)", finding.Text, StringComparison.Ordinal);
        Assert.Equal(2, finding.Evidence.Length);
        int risk = review.Hours.Count(h => h.Risk == true && (InNight(h, 13) || InNight(h, 16)));
        Assert.Contains($"came with {risk} risk hours", finding.Text, StringComparison.Ordinal);
        Assert.Contains("(leaves wet by the film model, or near the dew point)", finding.Caution, StringComparison.Ordinal);
        Assert.Contains("at least 4 hours before sunset", finding.Action, StringComparison.Ordinal);
        Assert.DoesNotContain("caused", string.Concat(finding.Text, finding.Caution, string.Concat(finding.Evidence)), StringComparison.Ordinal);
    }

    [Fact]
    public void Rank_EarlyBoomOnly_FindsNothingLate()
    {
        SyntheticHouse house = Dry.WithWatering(new LocalDateTime(2025, 10, 14, 9, 0), ("minutes", "40"), ("method", "boom"));
        Assert.Equal("calm", Assert.Single(ReviewPipeline.Run(house.Input).Findings).Id);
    }

    [Theory]
    [InlineData(6, true)]
    [InlineData(5, false)]
    public void Rank_HumidHoursInOneNight_NeedSix(int hours, bool expected)
    {
        Instant from = Dry.Input.Period.Start + Duration.FromHours(46);
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(t => t >= from && t < from + Duration.FromHours(hours) ? new Air(18 + (0.1 * Math.Sin(t.ToUnixTimeSeconds() / 900.0)), 86 + Math.Sin(t.ToUnixTimeSeconds() / 1500.0) / 2) : DryAir(t));
        Review review = ReviewPipeline.Run(house.Input);
        Finding? finding = review.Findings.SingleOrDefault(f => f.Id == "longHumidNights");
        Assert.Equal(expected, finding is not null);
        if (finding is not null)
        {
            Assert.StartsWith("1 of 7 nights had 6 or more humid hours: 6 hours at", finding.Text, StringComparison.Ordinal);
            Assert.StartsWith("Night of Tue 14 Oct: 6 of", Assert.Single(finding.Evidence), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Rank_NightBeforeMonday_IsWholeAndCountsRiskInThePeriodOnly()
    {
        Instant midnight = Dry.Input.Period.Start; // 21:00 on Sunday to 3:00 on Monday is damp: 6 h, of which 3 in the period
        SyntheticHouse house = Damp(midnight - Duration.FromHours(3), 6, 92);
        Finding finding = ReviewPipeline.Run(house.Input).Findings.Single(f => f.Id == "longHumidNights");
        Assert.StartsWith("1 of 7 nights had 6 or more humid hours: 6 hours at or above 85 % humidity or with leaves near the dew point, 3 risk hours", finding.Text, StringComparison.Ordinal);
        Assert.Matches("^Night of Sun 12 Oct: 6 of 1[34] hours humid, up to 92 %, 3 risk hours in this period\\.$", Assert.Single(finding.Evidence));
    }

    [Fact]
    public void Rank_NightAfterSunday_IsTheNextPeriods()
    {
        SyntheticHouse house = Damp(Dry.Input.Period.End - Duration.FromHours(6), 6, 88);
        Assert.DoesNotContain(ReviewPipeline.Run(house.Input).Findings, f => f.Id == "longHumidNights");
    }

    [Fact]
    public void Rank_NightWithFewerThanHalfItsHours_IsNotJudgedAndSaid()
    {
        Instant start = Dry.Input.Period.Start;
        SyntheticHouse house = Damp(start + Duration.FromHours(48), 6, 88).WithoutRows(start + Duration.FromHours(90), start + Duration.FromHours(110));
        Finding finding = ReviewPipeline.Run(house.Input).Findings.Single(f => f.Id == "longHumidNights");
        Assert.StartsWith("1 of 6 nights had", finding.Text, StringComparison.Ordinal);
        Assert.Equal(2, finding.Evidence.Length);
        Assert.Matches("^Night of Thu 16 Oct: 0 of 1[34] hours with data, too few to judge\\.$", finding.Evidence[1]);
    }

    [Fact]
    public void Rank_RiskBesideNightsThatCannotBeJudged_ClaimsNothingOfThem()
    {
        Instant start = Dry.Input.Period.Start;
        SyntheticHouse house = Damp(start + Duration.FromHours(59), 4, 97).WithoutRows(start + Duration.FromHours(91), start + Duration.FromHours(110));
        Finding finding = ReviewPipeline.Run(house.Input).Findings.Single(f => f.Id == "riskHours");
        Assert.DoesNotContain("without a long humid night", finding.Text, StringComparison.Ordinal);
        Assert.Contains("none of the 6 nights with enough data had 6 or more humid hours, 1 could not be judged", finding.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(134, true)]
    [InlineData(135, false)]
    public void Rank_HoursWithData_NeedFourFifths(int hoursOfData, bool expected)
    {
        Instant start = Dry.Input.Period.Start;
        Review review = ReviewPipeline.Run(Dry.WithoutRows(start + Duration.FromHours(hoursOfData), Dry.Input.Period.End).Input);
        Assert.Equal(expected, review.Findings.Any(f => f.Id == "tooLittleData"));
    }

    [Fact]
    public void Rank_RiskByDayOnly_IsNamedWithItsHours()
    {
        Instant noon = Dry.Input.Period.Start + Duration.FromHours(59);
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(t => t >= noon && t < noon + Duration.FromHours(4) ? new Air(18 + (0.1 * Math.Sin(t.ToUnixTimeSeconds() / 900.0)), 97 + (Math.Sin(t.ToUnixTimeSeconds() / 1500.0) / 2)) : DryAir(t));
        Finding finding = Assert.Single(ReviewPipeline.Run(house.Input).Findings);
        Assert.Equal("riskHours", finding.Id);
        Assert.Equal("Wed 15 Oct 11:00 to 15:00: 4 risk hours.", Assert.Single(finding.Evidence));
    }

    [Fact]
    public void Rank_SeveralFindings_AreNumberedFromOneByHoursAtStake()
    {
        Instant start = Dry.Input.Period.Start;
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir)
            .WithWatering(new LocalDateTime(2025, 10, 13, 15, 30), ("minutes", "40"), ("method", "boom"))
            .WithoutRows(start + Duration.FromHours(60), start + Duration.FromHours(168));
        Finding[] findings = [.. ReviewPipeline.Run(house.Input).Findings];
        Assert.Equal(Enumerable.Range(1, findings.Length), findings.Select(f => f.Rank));
        Assert.Equal("tooLittleData", findings[0].Id); // 108 hours
        Finding[] overlapping = [.. findings.Where(f => f.Id is "lateOverheadWatering" or "longHumidNights")];
        Assert.Equal(2, overlapping.Length);
        Assert.DoesNotContain("same hours", overlapping[0].Caution, StringComparison.Ordinal);
        Assert.EndsWith(" The same hours may count in a finding above.", overlapping[1].Caution, StringComparison.Ordinal);
    }

    private static SyntheticHouse Damp(Instant from, int hours, double humidityPct)
        => SyntheticHouse.Week("2025-W42").WithAir(t => t >= from && t < from + Duration.FromHours(hours)
            ? new Air(18 + (0.1 * Math.Sin(t.ToUnixTimeSeconds() / 900.0)), humidityPct + (Math.Sin(t.ToUnixTimeSeconds() / 1500.0) / 2))
            : DryAir(t));

    private static bool InNight(ReviewHour hour, int day)
    {
        Instant evening = new LocalDateTime(2025, 10, day, 16, 0).InUtc().ToInstant();
        Instant morning = new LocalDateTime(2025, 10, day + 1, 6, 20).InUtc().ToInstant();
        return hour.Start.ToInstant() >= evening && hour.Start.ToInstant() < morning && (hour.Night || hour.Start.Hour > 15 || hour.Start.Hour < 8);
    }
}
