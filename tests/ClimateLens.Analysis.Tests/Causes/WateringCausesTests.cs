using System.Collections.Immutable;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Analysis.Tests.Causes;

/// <summary>What single waterings did; simulated weeks show that it runs, not that it is right.</summary>
public sealed class WateringCausesTests
{
    private static readonly Review Boom = ReviewPipeline.Run(SimulatedCauses.Boom);

    [Fact]
    public void RiskHoursCaused_ByLateWaterings_AddUpToWhatAnEarlierFinishAvoids()
    {
        Watering[] late = [.. Boom.Waterings!.Value.Where(w => w is { WetsLeaves: true, AfterCutOff: true })];
        Assert.NotEmpty(late);
        Assert.All(late, w => Assert.True(w.RiskHoursCaused!.Low <= w.RiskHoursCaused.Value && w.RiskHoursCaused.Value <= w.RiskHoursCaused.High));
        Assert.All(Boom.Waterings.Value.Except(late), w => Assert.Null(w.RiskHoursCaused));
        double avoided = Boom.WhatIfs!.Value.Single(w => w.Name == "waterBeforeCutOff").RiskHoursAvoided.Value;
        Assert.Equal(avoided, late.Sum(w => w.RiskHoursCaused!.Value), 0.6); // the what-if is rounded to whole hours
    }

    [Fact]
    public void Hints_WithTheLogOfTheWeekWithheld_LieAtWaterings()
    {
        HouseInput silent = SimulatedCauses.Boom with { Records = [.. SimulatedCauses.Boom.Records.Where(r => r.Kind != RecordKind.Waterings || r.At < SimulatedCauses.Boom.Period.Start)] };
        WateringHint[] hints = [.. ReviewPipeline.Run(silent).WateringHints!];
        Assert.NotEmpty(hints);
        int near = hints.Count(h => Boom.Waterings!.Value.Any(w => Math.Abs((w.Start.ToInstant() - h.At.ToInstant()).TotalHours) < 1));
        Assert.True(near >= hints.Length - 1, $"{near} of {hints.Length}");
    }

    [Fact]
    public void Floods_OnDullDays_AreListedByTheLimitOfTheNurseryFile()
    {
        Review dull = ReviewPipeline.Run(Flooded(limit: 30)), bright = ReviewPipeline.Run(Flooded(limit: 0));
        Assert.All(dull.Floods!.Floods, f => Assert.True(f.Dull));
        Assert.All(bright.Floods!.Floods, f => Assert.False(f.Dull));
        Assert.Contains(dull.Findings, f => f.Id == "floodOnDullDay");
        Assert.DoesNotContain(bright.Findings, f => f.Id == "floodOnDullDay");
        Assert.Equal(dull.Floods.Dull.Rounds, bright.Floods.Bright.Rounds);
        Assert.Equal(0, dull.Floods.Bright.Rounds);
        Assert.Null(dull.Floods.Bright.EffectGm3);
        Assert.Null(Boom.Floods);
    }

    [Fact]
    public void CoarserPeriod_KeepsMeansAndRiskHours()
    {
        HousePeriod fine = LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Alignment.Align(SimulatedCauses.Boom)))));
        HousePeriod coarse = LeafState.Add(CoarserPeriod.Of(fine));
        Assert.Equal(4, coarse.StepsPerHour);
        Assert.Equal(fine.Frame.Axis.StartOf(fine.FirstStep), coarse.Frame.Axis.StartOf(coarse.FirstStep));
        ImmutableArray<double> before = fine.Frame.Values(Derived.TemperatureC), after = coarse.Frame.Values(Derived.TemperatureC);
        Assert.Equal((before[300] + before[301] + before[302]) / 3, after[100], 1e-12);
        Assert.InRange(Math.Abs(Risk(fine) - Risk(coarse)), 0, 4);
    }

    private static int Risk(HousePeriod house)
    {
        FoliageHours foliage = new(house, HourTable.Of(house));
        foliage.WithoutError();
        return foliage.Risk.Count(r => r);
    }

    /// <summary>House 2 as if its drip flooded the benches.</summary>
    private static HouseInput Flooded(double limit)
    {
        HouseInput drip = SimulatedCauses.Drip;
        return drip with
        {
            House = drip.House with { Rules = drip.House.Rules with { DullDayMJm2 = limit } },
            Records = [.. drip.Records.Select(Flood)],
            EarlierWaterings = [.. drip.EarlierWaterings.Select(Flood)],
        };
    }

    private static RecordRow Flood(RecordRow row) => row.Fields.ContainsKey("method") ? row with { Fields = row.Fields.SetItem("method", "ebbAndFlow") } : row;
}
