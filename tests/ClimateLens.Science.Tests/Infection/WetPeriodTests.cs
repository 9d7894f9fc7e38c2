using ClimateLens.Science.Infection;

namespace ClimateLens.Science.Tests.Infection;

/// <summary>Wet periods and wet hours by hand, in steps of half an hour.</summary>
public class WetPeriodTests
{
    private const double Nan = double.NaN;

    [Fact]
    public void Find_AGapWithin_IsToldAndDoesNotEndIt()
    {
        WetPeriod period = Assert.Single(Found([0, 1, Nan, Nan, 1, 1, 0, 0], [9, 10, 99, 99, 13, Nan, 9, 9], new(1, 1.5)));
        Assert.Equal(new WetPeriod(1, 6, 1.5, 11.5, 1, false), period);
    }

    [Fact]
    public void Find_AGapBehind_IsNoPartOfIt_ButLeavesItOpen()
        => Assert.Equal(new WetPeriod(1, 2, 0.5, 10, 0, true), Assert.Single(Found([0, 1, Nan, 0, 0, 0, 0, 0], [.. Enumerable.Repeat(10.0, 8)], new(1, 0))));

    [Fact]
    public void Find_NoTemperature_IsNotKnown() => Assert.True(double.IsNaN(Assert.Single(Found([0, 1, 0], [Nan, Nan, Nan], new(0, 0))).MeanTemperatureC));

    [Theory]
    [InlineData(0.9, 2)] // two half hours are enough, and the next period
    [InlineData(1.0, 2)]
    [InlineData(1.1, 1)]
    [InlineData(1.5, 1)]
    [InlineData(1.6, 0)]
    public void Find_LeastWetHours_LeavesShorterOnesOut(double leastHours, int expected)
        => Assert.Equal(expected, Found([0, 1, 1, 0, 0, 1, 1, 1, 0], [.. Enumerable.Repeat(10.0, 9)], new(0, leastHours)).Length);

    [Fact]
    public void Find_NoRoomOrColumnsApart_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => WetPeriods.Find([1, 0, 1], [10, 10, 10], 1800, WetPeriodRules.Strict, new WetPeriod[1]));
        Assert.Throws<ArgumentException>(() => WetPeriods.Find([1, 0, 1], [10, 10], 1800, WetPeriodRules.Strict, new WetPeriod[2]));
        foreach (double hours in (double[])[-0.1, 48.1, Nan])
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Found([1], [10], new(hours, 0)));
            Assert.Throws<ArgumentOutOfRangeException>(() => Found([1], [10], new(0, hours)));
        }
    }

    [Fact]
    public void WetWithinADay_HalfHours_CountTheLast48()
    {
        double[] wet = [.. Enumerable.Range(0, 130).Select(i => i % 7 == 0 ? Nan : i % 5 < 2 ? 1.0 : 0.0)], least = new double[wet.Length], most = new double[wet.Length];
        GrowerLimits.WetWithinADay(wet, 1800, least, most);
        for (int i = 0; i < wet.Length; i++)
        {
            double[] day = wet[Math.Max(0, i - 47)..(i + 1)];
            Assert.Equal(day.Count(w => w == 1) * 0.5, least[i]);
            Assert.Equal((48 - day.Count(w => w == 0)) * 0.5, most[i]); // before the first step nothing is known
        }

        Assert.Throws<ArgumentException>(() => GrowerLimits.WetWithinADay(wet, 1800, new double[1], most));
        Assert.Throws<ArgumentException>(() => GrowerLimits.WetWithinADay(wet, 1800, least, new double[1]));
    }

    [Fact]
    public void HoursFrom_HumidityAtTheLimit_Counts() => Assert.Equal(new KnownHours(1, 1.5), GrowerLimits.HoursFrom([60, 80, 90, Nan], 80, 1800));

    [Fact]
    public void Gerbera_OneDayOfThoseLookedAt_MakesItNo()
    {
        double[] damp = [.. Enumerable.Repeat(80.0, 10)], dull = [.. Enumerable.Repeat(500.0, 10)], great = new double[10];
        GerberaRule.Of(damp, dull, great);
        Assert.Equal(1, great[9]);
        foreach (int back in (int[])[1, 2, 3, 6, 7, 8])
        {
            double[] humidity = [.. damp], radiation = [.. dull];
            (back <= 3 ? ref radiation[9 - back] : ref humidity[9 - back]) = back <= 3 ? 1500 : 70; // neither below nor above
            GerberaRule.Of(humidity, radiation, great);
            Assert.Equal(0, great[9]);
        }

        Assert.Throws<ArgumentException>(() => GerberaRule.Of(damp, dull.AsSpan(1), great));
        Assert.Throws<ArgumentException>(() => GerberaRule.Of(damp, dull, great.AsSpan(1)));
    }

    [Fact]
    public void PowderyMildew_NoLimitOfTheDay_NeedsNoHighestTemperature()
    {
        double[] favourable = new double[1];
        PowderyMildewLimits.Rose.Of([new(92, 60, 20, Nan)], favourable);
        Assert.Equal(1, favourable[0]);
        PowderyMildewLimits.Poinsettia.Of([new(92, 60, 20, Nan)], favourable);
        Assert.True(double.IsNaN(favourable[0]));
        Assert.Throws<ArgumentException>(() => PowderyMildewLimits.Rose.Of([new(92, 60, 20, 25)], new double[2]));
    }

    [Fact]
    public void PowderyMildew_ImpossibleLimits_AreRefused()
    {
        PowderyMildewLimits rose = PowderyMildewLimits.Rose;
        Assert.All(
            (PowderyMildewLimits[])[
                rose with { NightFromPct = -1 }, rose with { NightFromPct = 101 }, rose with { DayFromPct = -1 }, rose with { DayFromPct = 71 }, rose with { DayUpToPct = 101 },
                rose with { LowestC = -11 }, rose with { LowestC = 29 }, rose with { HighestC = 51 }, rose with { DayBelowC = Nan }],
            limits => Assert.Throws<ArgumentOutOfRangeException>(() => limits.Of([new(92, 60, 20, 25)], new double[1])));
        (rose with { LowestC = -10 }).Of([new(92, 60, 20, 25)], new double[1]);
    }

    [Fact]
    public void Broome_AtTheEdgesOfTheTrials_IsNoStretch_AndWithoutDataNotKnown()
    {
        Assert.False(Broome.Of(new(12), 20).OutsideFit);
        Assert.True(Broome.Of(new(11.9), 20).OutsideFit);
        Assert.True(Broome.Of(new(12), 20.1).OutsideFit);
        Assert.Equal(Grade.NotKnown, Broome.Of(new(Nan), 10).Grade);
        Assert.Equal(Grade.NotKnown, Broome.Of(new(15), Nan).Grade);
        Assert.Equal(Grade.None, Broome.Of(new(Nan), 3.9).Grade);
        Assert.True(double.IsFinite(Broome.Of(new(40), 10).Index));
        Assert.Equal((double.NegativeInfinity, true), (Broome.Of(new(40.1), 10).Index, Broome.Of(new(40.1), 10).OutsideFit));
        Assert.False(Broome.Of(new(20), 3.9).OutsideFit);
    }

    private static WetPeriod[] Found(double[] wet, double[] temperatureC, WetPeriodRules rules)
    {
        WetPeriod[] periods = new WetPeriod[wet.Length];
        return periods[..WetPeriods.Find(wet, temperatureC, 1800, rules, periods)];
    }
}
