using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.EndToEnd.Tests.Simulator;

public class HouseHabitsTests
{
    private static readonly SimCalendar TwoWeeks = new(
        Instant.FromUtc(2025, 10, 4, 23, 0), Instant.FromUtc(2025, 10, 18, 23, 0), GannetRow.Zone);

    private static readonly WeatherPoint[] Weather = WeatherMaker.Make(TwoWeeks, 11);

    [Fact]
    public void Evenings_HouseOneAgainstHouseTwo_AreMoreHumid()
    {
        double Evening(HouseRun run) => Enumerable.Range(Gannet.Run.FirstMinute, run.Calendar.Minutes - Gannet.Run.FirstMinute)
            .Where(minute => run.Calendar.LocalMinuteOfDay(minute) is >= 18 * 60 and < 23 * 60)
            .Average(minute => run.Minutes[minute].HumidityPct);
        Assert.True(Evening(Gannet.Run.HouseOne) > Evening(Gannet.Run.HouseTwo) + 3);
    }

    [Fact]
    public void EveryWeek_HouseOneAgainstHouseTwo_HasMoreHoursNearTheDewPoint()
    {
        for (int week = 0; week < 10; week++)
        {
            double one = HumidHours(Gannet.Run.HouseOne, week), two = HumidHours(Gannet.Run.HouseTwo, week);
            Assert.InRange(one, 5, 90);
            Assert.InRange(two, 0.1, 40);
            Assert.True(one > two, $"week {week}: {one} h and {two} h");
        }
    }

    [Fact]
    public void Waterings_BothHouses_FollowTheirHabits()
    {
        HouseRun one = Gannet.Run.HouseOne, two = Gannet.Run.HouseTwo;
        int[] boomStarts = [.. one.Waterings.Where(w => w.Method == "overheadBoom").Select(w => one.Calendar.LocalMinuteOfDay(w.StartMinute))];
        Assert.True(boomStarts.Length > 30);
        Assert.InRange(boomStarts.Count(minute => minute >= 15 * 60) / (double)boomStarts.Length, 0.4, 0.9);
        Assert.All(two.Waterings, w =>
        {
            Assert.Equal("drip", w.Method);
            Assert.True(two.Calendar.LocalMinuteOfDay(w.EndMinute) <= 11 * 60);
        });
    }

    [Fact]
    public void Cover_WithTheWeeks_GrowsAndOpensOnlyWhenSpaced()
    {
        CropPlan crop = GannetRow.HouseOne.Crop;
        Assert.InRange(crop.At(new LocalDateTime(2025, 9, 12, 0, 0)).Cover, 0.3, 0.5);
        Assert.InRange(crop.At(new LocalDateTime(2025, 10, 25, 0, 0)).Cover, 0.93, 1);
        Assert.True(crop.At(new LocalDateTime(2025, 9, 10, 11, 0)).Cover > crop.At(new LocalDateTime(2025, 9, 10, 13, 0)).Cover);
    }

    [Fact]
    public void Replay_SameWaterings_SameTruth()
    {
        HouseRun asDecided = Simulate(GannetRow.HouseOne);
        HouseRun asListed = Replay.With(asDecided, Weather, 11, asDecided.Waterings);
        Assert.True(asDecided.Waterings.Count > 4);
        Assert.Equal(asDecided.Minutes, asListed.Minutes);
    }

    [Fact]
    public void Replay_LateWateringsMovedToMorning_LeavesFewerHumidNights()
    {
        HouseRun late = Simulate(GannetRow.HouseOne);
        HouseRun early = Replay.With(late, Weather, 11, Replay.Earlier(late, 15 * 60, 8 * 60));
        Assert.NotEqual(late.Waterings, early.Waterings);
        Assert.Equal(late.Book.Given, early.Book.Given, 1e-9);
        Assert.True(WetNightHours(early) < 0.7 * WetNightHours(late), $"{WetNightHours(early)} h against {WetNightHours(late)} h");
    }

    [Fact]
    public void Replay_WaterKeptOffTheLeaves_LeavesFilmToDewAlone()
    {
        HouseRun wet = Simulate(GannetRow.HouseOne);
        HouseRun dry = Replay.With(wet, Weather, 11, Replay.OffLeaves(wet, 0.4));
        Assert.Equal(wet.Waterings.Count, dry.Waterings.Count);
        Assert.True(WetNightHours(wet) > 10);
        Assert.True(WetNightHours(dry) < 0.5 * WetNightHours(wet), $"{WetNightHours(dry)} h against {WetNightHours(wet)} h");
    }

    [Fact]
    public void Replay_WithoutWatering_DriesThePots()
    {
        HouseRun watered = Simulate(GannetRow.HouseTwo);
        HouseRun dry = Replay.With(watered, Weather, 11, []);
        Assert.Empty(dry.Waterings);
        Assert.Equal(0, dry.Book.Given);
        Assert.True(dry.Minutes[^1].PotLevel < watered.Minutes[^1].PotLevel - 0.5);
    }

    [Fact]
    public void Bias_ControlHumidityReadTooHigh_VentsMore()
    {
        HouseRun honest = Simulate(GannetRow.HouseOne with { HumidityBiasPct = 0 });
        HouseRun biased = Simulate(GannetRow.HouseOne with { HumidityBiasPct = 6 });
        Assert.True(biased.Minutes.Average(m => m.LeePct) > honest.Minutes.Average(m => m.LeePct));
        Assert.True(biased.Minutes.Average(m => m.HumidityPct) < honest.Minutes.Average(m => m.HumidityPct));
    }

    [Fact]
    public void Seed_AnotherOne_OtherWeatherAndOtherTruth()
    {
        WeatherPoint[] other = WeatherMaker.Make(TwoWeeks, 12);
        Assert.NotEqual(Weather.Average(w => w.TemperatureC), other.Average(w => w.TemperatureC), 0.01);
        HouseRun run = HouseSimulation.Run(GannetRow.HouseOne, TwoWeeks, Weather, 12);
        Assert.NotEqual(Simulate(GannetRow.HouseOne).PotMl[0], run.PotMl[0]);
    }

    private static HouseRun Simulate(HouseOptions options) => HouseSimulation.Run(options, TwoWeeks, Weather, 11);

    private static double HumidHours(HouseRun run, int week)
    {
        int from = Gannet.Run.FirstMinute + (week * 10080);
        return run.Minutes[from..Math.Min(from + 10080, run.Minutes.Length)].Count(m => m.AirMarginK < 2) / 60.0;
    }

    private static double WetNightHours(HouseRun run)
        => Enumerable.Range(0, run.Calendar.Minutes)
            .Count(minute => run.Calendar.LocalMinuteOfDay(minute) is >= 19 * 60 or < 6 * 60 && run.Minutes[minute].FilmMm > 0.005) / 60.0;
}
