using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class ClockTests
{
    [Theory]
    [InlineData("2025-W42", "Europe/London", 168)]
    [InlineData("2025-W43", "Europe/London", 169)] // clocks go back on 26 October
    [InlineData("2025-W13", "Europe/London", 167)] // clocks go forward on 30 March
    [InlineData("2025-W40", "Australia/Adelaide", 167)] // half-hour zone, forward on 5 October
    [InlineData("2025-W14", "Australia/Adelaide", 169)] // back on 6 April
    [InlineData("2025-W42", "Asia/Kolkata", 168)]
    [InlineData("2025-W42", "Asia/Kathmandu", 168)]
    public void Run_WeekOfAnyClock_HasItsHours(string week, string zone, int expectedHours)
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week(week, zone).WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Equal(expectedHours, review.Coverage.ExpectedHours);
        Assert.Equal(expectedHours, review.Coverage.HoursWithData);
        Assert.Equal(expectedHours, review.Hours.Length);
        Assert.Equal(week, review.Period.Week);
        Assert.All(review.Hours, h => Assert.Equal(0, h.Start.Minute));
        Assert.Equal(0, review.Hours[0].Start.Hour);
        Assert.Equal(23, review.Hours[^1].Start.Hour);
        Assert.Equal(expectedHours, review.Hours.Select(h => h.Start.ToInstant()).Distinct().Count());
    }

    [Fact]
    public void Run_AutumnChange_HasTheRepeatedHourTwice()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W43").WithAir(SyntheticHouse.AutumnAir).Input);
        ReviewHour[] ones = [.. review.Hours.Where(h => h.Start.Date == new LocalDate(2025, 10, 26) && h.Start.Hour == 1)];
        Assert.Equal([Offset.FromHours(1), Offset.Zero], ones.Select(h => h.Start.Offset));
        Assert.Equal(Duration.FromHours(1), ones[1].Start.ToInstant() - ones[0].Start.ToInstant());
    }

    [Fact]
    public void Run_ZoneThatShiftsByHalfAnHour_KeepsEveryStep()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W40", "Australia/Lord_Howe", latitude: -31.5, longitude: 159.1).WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Equal(168, review.Hours.Length); // 167.5 hours: the last one is half an hour
        Assert.Equal(168, review.Coverage.HoursWithData);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(60)]
    public void Run_SourceOfAnyStep_GivesTheSameRiskWithinAnHourADay(int stepMinutes)
    {
        Review five = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input);
        Review other = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42", stepMinutes: stepMinutes).WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Equal(168, other.Coverage.HoursWithData);
        Assert.InRange(other.RiskHours!.Value - five.RiskHours!.Value, -7, 7);
    }

    [Fact]
    public void Run_SevenMinuteLogger_LeavesNoGaps()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42", stepMinutes: 7).WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Equal(168, review.Coverage.HoursWithData);
        Assert.Empty(review.Coverage.Gaps);
    }

    [Fact]
    public void Run_PeriodOfThreeDays_HasNoWeek()
    {
        DateTimeZone london = DateTimeZoneProviders.Tzdb["Europe/London"];
        Interval period = new(london.AtStartOfDay(new LocalDate(2025, 10, 13)).ToInstant(), london.AtStartOfDay(new LocalDate(2025, 10, 16)).ToInstant());
        Review review = ReviewPipeline.Run(SyntheticHouse.Between(period).WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Null(review.Period.Week);
        Assert.Equal(72, review.Hours.Length);
        Assert.NotNull(review.RiskHours);
    }
}
