using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Balance;

public class BalanceReplayTests
{
    private static readonly BalanceTerms Terms = MadeUpBalance.AllTerms;

    private static readonly BalanceTerms Bare = new(false, false, false, false, false, false, true, true);

    [Fact]
    public void WhatIf_NothingMoved_IsWhatWasMeasured()
    {
        BalanceInputs week = MadeUpBalance.Measured(MadeUpBalance.Drivers(1, 7), TermCatalogue.Typical(), 1, 0.3);
        double[] same = BalanceReplay.WhatIf(week, week, Terms, TermCatalogue.Typical());
        Assert.Equal(week.HumidityGm3.ToArray(), same);
    }

    [Fact]
    public void Run_MoreTranspiration_IsNeverDrier() => Gen.Select(Gen.ULong, Gen.Double[0, 1.5], Gen.Double[0, 20], Gen.Bool).Sample((seed, more, moreByAir, byAir) =>
    {
        double[] less = MadeUpBalance.Parameters(new SeededRandom(seed)), most = [.. less];
        most[(int)(byAir ? BalanceTerm.AirTranspiration : BalanceTerm.SunTranspiration)] += byAir ? moreByAir : more;
        BalanceInputs week = MadeUpBalance.Drivers(seed, 4);
        double[] dry = BalanceReplay.Run(week, Terms, less), moist = BalanceReplay.Run(week, Terms, most);
        Assert.All(dry.Zip(moist).Skip(1), pair => Assert.True(pair.Second >= pair.First - 1e-9, $"{pair}"));
    }, iter: 100);

    [Fact]
    public void Run_AnyParameters_StaysBetweenNothingAndSaturation() => Gen.ULong.Sample(seed =>
    {
        var random = new SeededRandom(seed);
        double[] any = [.. TermCatalogue.All.Select(info => random.NextUniform(info.Low, info.High))];
        BalanceInputs week = MadeUpBalance.Drivers(seed, 4);
        Assert.All(BalanceReplay.Run(week, Terms, any).Skip(1), humidity => Assert.InRange(humidity, 0, 40));
    }, iter: 100);

    [Fact]
    public void RunAll_AnyParameters_IsToTheLastBitWhatEachIsAlone() => Gen.Select(Gen.ULong, Gen.Int[1, PreparedReplay.AtOnce]).Sample((seed, count) =>
    {
        var random = new SeededRandom(seed);
        double[][] sets = [.. Enumerable.Range(0, count).Select(_ => TermCatalogue.All.Select(info => random.NextUniform(info.Low, info.High)).ToArray())];
        BalanceInputs week = MadeUpBalance.Drivers(seed, 3);
        double[] torn = week.AirC.ToArray();
        torn.AsSpan(100, 3).Fill(double.NaN);
        PreparedReplay replay = new(week with { AirC = torn }, Terms, 1);
        replay.RunAll(sets);
        double[][] together = [.. sets.Select((_, set) => replay.Humidity(set).ToArray())];
        Assert.All(sets.Zip(together), one => Assert.Equal(replay.Run(one.First).ToArray(), one.Second));
        Assert.True(double.IsNaN(together[0][101]) && double.IsFinite(together[0][^1]));
    }, iter: 100);

    [Fact]
    public void RunAll_NoSetsOrTooMany_IsRefused()
    {
        PreparedReplay replay = new(MadeUpBalance.Drivers(1, 1), Terms, 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => replay.RunAll([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => replay.RunAll([.. Enumerable.Repeat(TermCatalogue.Typical(), PreparedReplay.AtOnce + 1)]));
        Assert.Throws<ArgumentException>(() => replay.RunAll([[1.0]]));
    }

    [Fact]
    public void WhatIf_WaterKeptOffLeaves_IsNeverMoister()
    {
        BalanceInputs week = MadeUpBalance.Drivers(2, 7);
        double[] off = BalanceReplay.WhatIf(week, week with { LeafWetted = default }, Terms, TermCatalogue.Typical());
        Assert.All(off, humidity => Assert.True(humidity <= 12 + 1e-9));
        Assert.True(off.Average() < 11.9);
    }

    [Fact]
    public void WhatIf_LateWateringMovedToTheMorning_DriesTheNight()
    {
        BalanceInputs week = MadeUpBalance.Drivers(3, 2);
        double[] late = new double[week.Steps], early = new double[week.Steps];
        WettedShare.Add(late, 66, 68, 1);
        WettedShare.Add(early, 34, 36, 1);
        double[] moved = BalanceReplay.WhatIf(week with { LeafWetted = late }, week with { LeafWetted = early }, Terms, TermCatalogue.Typical());
        Assert.All(moved[34..60], humidity => Assert.True(humidity >= 12));
        Assert.All(moved[70..90], humidity => Assert.True(humidity <= 12));
        Assert.True(moved[40] > 12.2 && moved[80] < 11.8, $"{moved[40]} {moved[80]}");
    }

    [Fact]
    public void WhatIf_ChangeThatCannotBeRun_LeavesWhatWasMeasured()
    {
        BalanceInputs week = MadeUpBalance.Drivers(3, 3);
        double[] outside = week.OutsideGm3.ToArray(), humidity = week.HumidityGm3.ToArray();
        Array.Fill(outside, double.NaN, 100, 20);
        humidity[200] = double.NaN;
        BalanceInputs torn = week with { OutsideGm3 = outside, HumidityGm3 = humidity };
        double[] off = BalanceReplay.WhatIf(torn, torn with { LeafWetted = default }, Terms, TermCatalogue.Typical());
        Assert.All(off[100..121], value => Assert.Equal(12, value));
        Assert.True(double.IsNaN(off[200]));
        Assert.All(off[201..], value => Assert.False(double.IsNaN(value)));
    }

    /// <summary>
    /// Water that evaporates into a closed house 4 m high raises it by mass over volume: 20 g/m² are 5 g/m³ (science notes: 1 L/m² is 250 g/m³).
    /// </summary>
    [Fact]
    public void Run_ClosedHouse_HoldsAllThatEvaporates()
    {
        double[] parameters = new double[TermCatalogue.All.Count];
        parameters[(int)BalanceTerm.LeafStore] = 20;
        parameters[(int)BalanceTerm.LeafEvaporation] = 30;
        parameters[(int)BalanceTerm.FloorStore] = 1;
        parameters[(int)BalanceTerm.Leak] = 1e-12;
        int steps = 400;
        double[] wet = new double[steps], air = new double[steps], outside = new double[steps], humidity = new double[steps];
        Array.Fill(air, 25);
        Array.Fill(humidity, 10);
        WettedShare.Add(wet, 3.2, 6.7, 1);
        BalanceInputs closed = new() { StepHours = 0.25, Day = new int[steps], HumidityGm3 = humidity, AirC = air, OutsideGm3 = outside, LeafWetted = wet };
        Assert.Equal(15, BalanceReplay.Run(closed, Bare, parameters)[^1], 1e-3);
    }

    [Fact]
    public void Score_HouseOfTheEquations_BeatsBothReferencesAndNoiseDoesNot()
    {
        BalanceInputs house = MadeUpBalance.Measured(MadeUpBalance.Drivers(5, 21), TermCatalogue.Typical(), 5, 0.1);
        HeldOutScore score = BalanceScore.Of(house)!;
        Assert.True(score is { HasSkill: true, HeldOutDays: 5 }, $"{score}");
        Assert.True(score.Persistence.Skill > 0.9 && score.DailyCurve.Skill > 0.9, $"{score}");
        Assert.Equal(score.Persistence.Count, score.ResidualGm3.ToArray().Count(double.IsFinite));
        var random = new SeededRandom(1);
        double[] noise = [.. Enumerable.Range(0, house.Steps).Select(_ => 12 + random.NextNormal())];
        Assert.False(BalanceScore.Of(house with { HumidityGm3 = noise })!.HasSkill);
    }

    [Fact]
    public void WettedShare_AddsUpToTheShare()
    {
        double[] column = new double[10];
        WettedShare.Add(column, 2.5, 4.25, 0.5);
        WettedShare.Add(column, 7.5, 7.5, 0.25);
        Assert.Equal([0, 0, 0.5 * 0.5 / 1.75, 0.5 / 1.75, 0.5 * 0.25 / 1.75, 0, 0, 0.25, 0, 0], column.Select(v => Math.Round(v, 15)), (a, b) => Math.Abs(a - b) < 1e-12);
        WettedShare.Add(column, -5, -2, 1);
        WettedShare.Add(column, 20, 30, 1);
        Assert.Equal(0.75, column.Sum(), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => WettedShare.Add(column, 3, 2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WettedShare.Add(column, 1, 2, 1.5));
    }
}
