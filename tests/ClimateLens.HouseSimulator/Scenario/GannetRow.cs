using ClimateLens.HouseSimulator.Control;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Watering;
using NodaTime;

namespace ClimateLens.HouseSimulator.Scenario;

/// <summary>The invented nursery: two houses of potted cyclamen under one weather, autumn 2025.</summary>
public static class GannetRow
{
    public const double HouseOneAreaM2 = 1200, HouseTwoAreaM2 = 640, ValveLitresPerMinute = 96;

    public static DateTimeZone Zone { get; } = DateTimeZoneProviders.Tzdb["Europe/London"];

    /// <summary>First local day with readings.</summary>
    public static LocalDate FirstDay { get; } = new(2025, 9, 1);

    /// <summary>Last local day with readings.</summary>
    public static LocalDate LastDay { get; } = new(2025, 11, 9);

    /// <summary>The readings, with four days before them in which the houses find their ways.</summary>
    public static SimCalendar Calendar { get; } = new(
        Zone.AtStartOfDay(FirstDay.PlusDays(-4)).ToInstant(), Zone.AtStartOfDay(LastDay.PlusDays(1)).ToInstant(), Zone);

    /// <summary>Overhead boom, closing canopy, little vent and heat against humidity.</summary>
    public static HouseOptions HouseOne { get; } = new(
        "1",
        new CropPlan(new LocalDate(2025, 8, 4), 0.30, [new(new LocalDate(2025, 8, 4), 0.14), new(new LocalDate(2025, 9, 10), 0.20)]),
        new ControlSettings(15.0, 17.5, 1.5, 90, 0.8, 7, 0, 100, 4),
        new BoomWatering(0.7),
        TemperatureBiasK: 0.1,
        HumidityBiasPct: 0.8);

    /// <summary>Drip, wider spacing, vents and a warm pipe against humidity.</summary>
    public static HouseOptions HouseTwo { get; } = new(
        "2",
        new CropPlan(
            new LocalDate(2025, 8, 4), 0.28, [new(new LocalDate(2025, 8, 4), 0.14), new(new LocalDate(2025, 9, 8), 0.22), new(new LocalDate(2025, 10, 6), 0.26)]),
        new ControlSettings(15.5, 18.0, 1.2, 88.5, 0.7, 6, 30, 95, 6),
        new DripWatering(ValveLitresPerMinute, HouseTwoAreaM2 / 2),
        TemperatureBiasK: -0.1,
        HumidityBiasPct: -0.6);
}
