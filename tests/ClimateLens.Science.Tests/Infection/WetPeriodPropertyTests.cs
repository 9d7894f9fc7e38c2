using ClimateLens.Science.Infection;
using CsCheck;

namespace ClimateLens.Science.Tests.Infection;

/// <summary>What holds for wet periods whatever the weather.</summary>
public class WetPeriodPropertyTests
{
    private static readonly Gen<double[]> States =
        Gen.Int[0, 8].Select(n => n <= 3 ? 0.0 : n <= 7 ? 1 : double.NaN).Array[1, 200];

    [Fact]
    public void Find_NothingLeftOut_CountsEveryWetStepOnce() => Gen.Select(States, Gen.Double[0, 6]).Sample((wet, dry) =>
        Find(wet, new(dry, 0)).Sum(p => p.WetHours) == wet.Count(state => state == 1));

    [Fact]
    public void Find_Periods_BeginAndEndWetAndLieApart() => Gen.Select(States, Gen.Double[0, 6]).Sample((wet, dry) =>
    {
        WetPeriod[] periods = Find(wet, new(dry, 0));
        return periods.All(p => wet[p.Start] == 1 && wet[p.End - 1] == 1 && p.WetHours + p.UnknownHours <= p.End - p.Start)
            && periods.Zip(periods.Skip(1)).All(pair => pair.Second.Start - pair.First.End > Math.Floor(dry));
    });

    [Fact]
    public void Find_LongerBreaksAllowed_NeverMorePeriods() => Gen.Select(States, Gen.Double[0, 6], Gen.Double[0, 6]).Sample((wet, dry, more) =>
        Find(wet, new(dry + more, 0)).Length <= Find(wet, new(dry, 0)).Length);

    [Fact]
    public void Find_FinerSteps_FindTheSameHours() => Gen.Select(States, Gen.Int[2, 6]).Sample((wet, finer) =>
    {
        double[] fine = [.. wet.SelectMany(state => Enumerable.Repeat(state, finer))];
        WetPeriod[] coarse = Find(wet, WetPeriodRules.Broome), found = Find(fine, WetPeriodRules.Broome, 3600.0 / finer);
        return coarse.Length == found.Length && coarse.Zip(found).All(pair =>
            pair.Second.Start == finer * pair.First.Start && Math.Abs(pair.First.WetHours - pair.Second.WetHours) < 1e-9);
    });

    [Fact]
    public void Find_MeanTemperature_IsThatOfWetStepsOnly() =>
        Assert.Equal(18, Run([1, 0, 1, 0, 0, 0, 0, 0], [16, 99, 20, 99, 99, 99, 99, 99]).MeanTemperatureC);

    [Fact]
    public void Find_PeriodAtAnEndOrAGap_IsOpen()
    {
        Assert.True(Run([1, 0, 0, 0, 0, 0], new double[6]).Open);
        Assert.True(Run([0, 1, 1], new double[3]).Open);
        Assert.True(Run([0, 1, double.NaN, 0, 0, 0, 0, 0], new double[8]).Open);
        Assert.False(Run([0, 1, 1, 0, 0, 0, 0, 0], new double[8]).Open);
    }

    private static WetPeriod Run(double[] wet, double[] temperatureC)
    {
        var periods = new WetPeriod[wet.Length];
        Assert.Equal(1, WetPeriods.Find(wet, temperatureC, 3600, WetPeriodRules.Broome, periods));
        return periods[0];
    }

    private static WetPeriod[] Find(double[] wet, WetPeriodRules rules, double stepSeconds = 3600)
    {
        var periods = new WetPeriod[wet.Length];
        return periods[..WetPeriods.Find(wet, new double[wet.Length], stepSeconds, rules, periods)];
    }
}
