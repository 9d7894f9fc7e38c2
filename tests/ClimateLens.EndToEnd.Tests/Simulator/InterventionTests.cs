using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Truth;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.EndToEnd.Tests.Simulator;

/// <summary>The same house, weather and seed with something done otherwise in its last week: the truth that what-ifs are held to.</summary>
public class InterventionTests
{
    private const ulong Seed = 11;

    private static readonly SimCalendar Weeks = new(
        GannetRow.Zone.AtStartOfDay(new LocalDate(2025, 9, 29)).ToInstant(), GannetRow.Zone.AtStartOfDay(new LocalDate(2025, 10, 27)).ToInstant(), GannetRow.Zone);

    private static readonly LocalDate Monday = new(2025, 10, 13), NextMonday = new(2025, 10, 20);

    private static readonly InterventionPlan Plan = new(Monday, NextMonday, _ => 11 * 60);

    private static readonly WeatherPoint[] Weather = WeatherMaker.Make(Weeks, Seed);

    private static readonly HouseRun AsWas = HouseSimulation.Run(GannetRow.HouseOne, Weeks, Weather, Seed);

    private static readonly int From = Weeks.MinuteOf(GannetRow.Zone.AtStartOfDay(Monday).ToInstant());

    private static readonly int Until = Weeks.MinuteOf(GannetRow.Zone.AtStartOfDay(NextMonday).ToInstant());

    [Fact]
    public void Nothing_DoneOtherwise_IsTheSameTruth()
    {
        HouseRun same = Replayed(Intervention.None);
        Assert.Equal(Until, same.Calendar.Minutes);
        Assert.Equal(AsWas.Minutes[..Until], same.Minutes[..Until]);
        Assert.Equal(AsWas.Waterings.Where(w => w.StartMinute < Until), same.Waterings);
    }

    [Theory]
    [InlineData(Intervention.WaterBeforeCutOff)]
    [InlineData(Intervention.WaterOffLeaves)]
    [InlineData(Intervention.HeatAndVentBeforeSunrise)]
    [InlineData(Intervention.All & ~Intervention.WiderSpacing)]
    public void Weeks_BeforeThePlan_StayAsTheyWere(Intervention what) => Assert.Equal(AsWas.Minutes[..From], Replayed(what).Minutes[..From]);

    [Fact]
    public void WaterBeforeCutOff_EveryLeafWetting_IsDoneByThenWithTheSameWater()
    {
        HouseRun moved = Replayed(Intervention.WaterBeforeCutOff);
        Assert.Contains(AsWas.Waterings, w => IsInPlan(w.StartMinute) && LocalEnd(AsWas, w.StartMinute, w.Minutes) > 15 * 60);
        Assert.All(moved.Waterings.Where(w => IsInPlan(w.StartMinute)), w => Assert.True(LocalEnd(moved, w.StartMinute, w.Minutes) <= 11 * 60));
        Assert.Equal(
            AsWas.Waterings.Where(w => w.StartMinute < Until).Sum(w => w.LitresPerM2), moved.Waterings.Sum(w => w.LitresPerM2), 1e-9);
        Assert.True(Risk(moved) < Risk(AsWas), $"{Risk(moved)} {Risk(AsWas)}");
    }

    [Fact]
    public void WaterOffLeaves_WithinThePlan_WetsNoLeafAndWatersPotsAlike()
    {
        HouseRun off = Replayed(Intervention.WaterOffLeaves);
        Assert.DoesNotContain(off.Waterings, w => IsInPlan(w.StartMinute) && w.IsOverhead);
        Assert.Contains(off.Waterings, w => w.IsOverhead);
        Assert.Equal(AsWas.Minutes[Until].PotLevel, off.Minutes[Until].PotLevel, 0.3);
        Assert.True(Risk(off) < Risk(AsWas), $"{Risk(off)} {Risk(AsWas)}");
    }

    [Fact]
    public void WiderSpacing_WithinThePlan_OpensTheCanopy()
    {
        HouseRun wider = Replayed(Intervention.WiderSpacing);
        Assert.Equal(AsWas.Minutes[..(From - 1440)], wider.Minutes[..(From - 1440)]);
        Assert.True(wider.Minutes[From + 1].Cover < AsWas.Minutes[From + 1].Cover - 0.05, $"{wider.Minutes[From + 1].Cover}");
    }

    [Fact]
    public void HeatAndVent_BeforeSunrise_HoldsBothAndOnlyThen()
    {
        HouseRun held = Replayed(Intervention.HeatAndVentBeforeSunrise);
        for (int day = From; day < Until; day += 1440)
        {
            HouseMinute atSix = held.Minutes[day + (6 * 60)];
            Assert.True(atSix.PipeC >= 39.9 && atSix.LeePct >= 6.4, $"{atSix}"); // a motor ignores a trifle
        }

        double Margin(HouseRun run) => Enumerable.Range(From, Until - From)
            .Where(m => Weeks.LocalMinuteOfDay(m) is >= 5 * 60 and < 7 * 60).Average(m => run.Minutes[m].LeafMarginK);
        Assert.True(Margin(held) > Margin(AsWas) + 0.2, $"{Margin(held)} {Margin(AsWas)}");
        Assert.True(Risk(held) <= Risk(AsWas));
    }

    [Fact]
    public void All_DoneTogether_LeaveTheFewestHours()
    {
        int all = Risk(Replayed(Intervention.All));
        Assert.All(
            (Intervention[])[Intervention.WaterBeforeCutOff, Intervention.WaterOffLeaves, Intervention.HeatAndVentBeforeSunrise],
            what => Assert.True(all <= Risk(Replayed(what))));
        Assert.True(all < Risk(AsWas) - 5, $"{all} {Risk(AsWas)}");
    }

    private static HouseRun Replayed(Intervention what) => Plan.Replayed(AsWas, GannetRow.Zone, Weather, Seed, what);

    private static int Risk(HouseRun run) => TrueRisk.Count(run, From, Until);

    private static bool IsInPlan(int minute) => minute >= From && minute < Until;

    private static int LocalEnd(HouseRun run, int start, int minutes) => run.Calendar.LocalMinuteOfDay(start) + minutes;
}
