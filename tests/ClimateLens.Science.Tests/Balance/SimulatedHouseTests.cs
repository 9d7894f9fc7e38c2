using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.Science.Balance;

namespace ClimateLens.Science.Tests.Balance;

/// <summary>The balance on houses whose equations are not its own, against the true what-if: the same house run again.</summary>
public class SimulatedHouseTests
{
    private static readonly SimulatedHouse[] Houses = [.. Enumerable.Range(1, 6).Select(seed => new SimulatedHouse((ulong)seed))];

    [Fact]
    public void Score_DaysHeldOut_BeatsBothReferences() => Assert.All(Houses, house =>
    {
        HeldOutScore score = BalanceScore.Of(house.RunIn)!, blind = BalanceScore.Of(Blind(house.RunIn))!;
        Assert.True(score.HeldOutDays == 5 && score.Persistence.Skill > 0.6 && score.DailyCurve.Skill > 0.5, $"{score}");
        Assert.True(blind.Persistence.Skill > 0.4 && blind.DailyCurve.Skill > 0.3, $"{blind}");
    });

    /// <summary>Over six weeks together: how much of the true drying it finds, with vents and wind and without.</summary>
    [Fact]
    public void WhatIf_WaterKeptOffLeaves_FindsMostOfTheTrueDrying()
    {
        Assert.InRange(FoundShare(Intervention.WaterOffLeaves, all => all), 0.7, 1.2);
        Assert.InRange(FoundShare(Intervention.WaterOffLeaves, Blind), 0.7, 1.4);
    }

    /// <summary>A watering that is moved leaves nights drier by more than the balance says: it is about half right here, and never the wrong way.</summary>
    [Fact]
    public void WhatIf_WateringMovedToTheMorning_FindsPartOfTheTrueDrying()
    {
        Assert.InRange(FoundShare(Intervention.WaterBeforeCutOff, all => all), 0.3, 1.2);
        Assert.InRange(FoundShare(Intervention.WaterBeforeCutOff, Blind), 0.3, 1.2);
    }

    private static BalanceInputs Blind(BalanceInputs inputs) => inputs with { Vent = default, WindMs = default };

    private static double FoundShare(Intervention what, Func<BalanceInputs, BalanceInputs> known)
    {
        double truth = 0, found = 0;
        foreach (SimulatedHouse house in Houses)
        {
            BalanceFit fit = BalanceFit.Of(known(house.RunIn));
            BalanceInputs week = house.Week, otherwise = house.WeekUnder(what);
            double[] whatIf = BalanceReplay.WhatIf(known(week), known(week) with { LeafWetted = otherwise.LeafWetted }, fit.Terms, fit.Parameters());
            for (int i = 0; i < whatIf.Length; i++)
            {
                truth += Math.Min(0, otherwise.HumidityGm3.Span[i] - week.HumidityGm3.Span[i]);
                found += Math.Min(0, whatIf[i] - week.HumidityGm3.Span[i]);
            }
        }

        return found / truth;
    }
}
