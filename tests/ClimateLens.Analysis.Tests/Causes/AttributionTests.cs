using System.Text.Json;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Tests.Causes;

public sealed class AttributionTests
{
    private static readonly Review Boom = ReviewPipeline.Run(SimulatedCauses.Boom);

    [Fact]
    public void Shares_OfTheRiskHours_AddUpToThem()
    {
        Assert.Equal(["lateWatering", "leafWetting", "closedCanopy", "climateControl", "weather"], Boom.Causes!.Value.Select(c => c.Name));
        Assert.Equal(Boom.RiskHours!.Value, Boom.Causes.Value.Sum(c => c.RiskHours.Value), 1e-9);
        Assert.All(Boom.Causes.Value, c => Assert.True(c.RiskHours.Low <= c.RiskHours.Value && c.RiskHours.Value <= c.RiskHours.High));
    }

    [Fact]
    public void WhatIfs_LeaveWhatTheyDoNotAvoid()
    {
        Assert.Equal(["waterBeforeCutOff", "waterOffLeaves", "widerSpacing", "heatAndVentBeforeSunrise", "all"], Boom.WhatIfs!.Value.Select(w => w.Name));
        Assert.All(Boom.WhatIfs.Value, w => Assert.Equal(Boom.RiskHours!.Value, w.RiskHours.Value + w.RiskHoursAvoided.Value));
        Assert.True(Avoided(Boom, "waterOffLeaves") > Avoided(Boom, "heatAndVentBeforeSunrise"));
        Assert.True(Avoided(Boom, "waterOffLeaves") > Boom.RiskHours!.Value / 4); // the boom wets leaves in this house, and little else does
    }

    [Fact]
    public void Balance_OfASimulatedHouse_HasSkillAndAgreesWithTheComparison()
    {
        Assert.True(Boom.HouseBalance!.HasSkill);
        Assert.InRange(Boom.HouseBalance.SkillOverDayBefore!.Value, 0.5, 1);
        Assert.True(Boom.MatchedWaterings!.Agrees);
        Assert.True(Boom.MatchedWaterings.EffectGm3!.Low > 0); // water over leaves makes the air damper
        Assert.InRange(Boom.MatchedWaterings.PlaceboRejections!.Value, 0, 0.3);
    }

    [Fact]
    public void Drip_InTheMorning_IsNotChargedToLateWatering()
    {
        Review drip = ReviewPipeline.Run(SimulatedCauses.Drip);
        Assert.Equal(0, drip.Causes!.Value.Single(c => c.Name == "lateWatering").RiskHours.Value);
        Assert.Equal(0, Avoided(drip, "waterOffLeaves"));
        Assert.Null(drip.MatchedWaterings);
        Assert.DoesNotContain(drip.Findings, f => f.Id is "lateOverheadWatering" or "keepWaterOffLeaves");
    }

    [Fact]
    public void SameInput_GivesTheSameBytes()
        => Assert.Equal(JsonSerializer.Serialize(Boom.WhatIfs), JsonSerializer.Serialize(ReviewPipeline.Run(SimulatedCauses.Boom).WhatIfs));

    [Fact]
    public void WithoutVents_TheirWhatIfIsNotToldAndNamed()
    {
        Review review = ReviewPipeline.Run(SimulatedCauses.Without(SimulatedCauses.Boom, "ventPosition"));
        Assert.DoesNotContain(review.WhatIfs ?? [], w => w.Name == "heatAndVentBeforeSunrise");
        Assert.Contains(review.HouseBalance!.Lacks, l => l.StartsWith("Vent position is not logged", StringComparison.Ordinal));
        Assert.Contains(review.NotKnown, u => u.What is "whatIfs.heatAndVentBeforeSunrise" or "whatIfs");
    }

    [Fact]
    public void WithoutHumidityOutside_NothingIsTold()
    {
        Review review = ReviewPipeline.Run(SimulatedCauses.Without(SimulatedCauses.Boom, "outsideHumidity"));
        AssertNotTold(review, "temperature and humidity outside");
        Assert.Null(review.HouseBalance);
    }

    [Fact]
    public void WithTooFewDaysBefore_NothingIsTold()
    {
        AssertNotTold(ReviewPipeline.Run(SimulatedCauses.WithHistory(SimulatedCauses.Boom, 10)), "10 days before the period");
        AssertNotTold(ReviewPipeline.Run(SimulatedCauses.Boom with { History = [] }), "0 days before the period");
    }

    [Fact]
    public void WateringsThatTheWeeksBeforeDoNotHave_AreStrangeToTheBalance()
    {
        Review review = ReviewPipeline.Run(SimulatedCauses.Boom with { EarlierWaterings = [], Records = [.. SimulatedCauses.Boom.Records.Where(r => r.At >= SimulatedCauses.Boom.Period.Start)] });
        AssertNotTold(review, "no watering over the leaves");
    }

    private static void AssertNotTold(Review review, string why)
    {
        Assert.Null(review.WhatIfs);
        Assert.Null(review.Causes);
        Assert.Contains(why, review.NotKnown.Single(u => u.What == "causes").Why, StringComparison.Ordinal);
        Assert.DoesNotContain(review.Findings, f => f.Id is "keepWaterOffLeaves" or "spaceWider" or "heatAndVentBeforeSunrise");
    }

    private static double Avoided(Review review, string whatIf) => review.WhatIfs!.Value.Single(w => w.Name == whatIf).RiskHoursAvoided.Value;
}
