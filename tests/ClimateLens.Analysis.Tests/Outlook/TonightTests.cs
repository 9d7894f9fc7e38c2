using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Tests.Causes;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Outlook;

public sealed class TonightTests
{
    [Fact]
    public void Of_SimulatedHouse_ScoresPastNightsAndShowsOnlyWhatBeatsGuesses()
    {
        Review review = ReviewPipeline.Run(SimulatedCauses.Boom);
        OutlookReport outlook = review.Outlook!;
        Assert.Equal(SimulatedCauses.Boom.Period.End.InZone(SimulatedCauses.Boom.Nursery.Zone).Date, outlook.Sunset.Date);
        Assert.InRange(outlook.Score!.Nights, 15, 22);
        bool better = outlook.Score is { SkillOverNightBefore: > 0, SkillOverMeanNight: > 0 };
        Assert.True(outlook.RiskHours is null || better);
        Assert.Equal(outlook.RiskHours is null, review.NotKnown.Any(u => u.What == "outlook.riskHours"));
        Assert.Equal(7, outlook.DryingDays);
        Assert.True(outlook.LatestFinishOnWorstDay is null || outlook.LatestFinishOnWorstDay.Value.ToInstant() <= outlook.LatestFinish!.Value.ToInstant());
    }

    [Fact]
    public void Of_DryingHoursSetByTheGrower_AreTheFinishOfTheDay()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);
        RiskRules rules = house.Input.House.Rules with { DryingHours = 5, SetByUser = ["dryingHours"] };
        OutlookReport outlook = ReviewPipeline.Run(house.WithRules(rules).Input).Outlook!;
        Instant expected = outlook.Sunset.ToInstant() - Duration.FromHours(5);
        Assert.Equal(0, (outlook.LatestFinish!.Value.ToInstant() - expected).TotalMinutes, 1.0);
        Assert.Equal(0, outlook.FinishMissHours!.Value, 0.01);
        Assert.Null(outlook.RiskHours); // one week tells nothing of a night
    }

    [Fact]
    public void Of_PolarNight_TellsNothing()
        => Assert.Null(ReviewPipeline.Run(SyntheticHouse.Week("2025-W51", "Europe/Oslo", latitude: 69.6, longitude: 18.9).WithAir(SyntheticHouse.AutumnAir).Input).Outlook);
}
