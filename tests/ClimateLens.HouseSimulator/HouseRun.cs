using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Physics;
using ClimateLens.HouseSimulator.Watering;

namespace ClimateLens.HouseSimulator;

/// <summary>What became of a house: the truth, which no sensor blurred.</summary>
/// <param name="Options">The house.</param>
/// <param name="Calendar">Its minutes.</param>
/// <param name="Minutes">State at the end of each minute, so that entry m is the state at <c>Calendar.At(m)</c>; entry 0 is the start.</param>
/// <param name="Waterings">All waterings, in time order.</param>
/// <param name="PotMl">Water in each pot every hour, first entry at the start. [mL]</param>
/// <param name="Book">Where water and heat went.</param>
/// <param name="WaterStored">All water in the house at the end. [kg/m²]</param>
/// <param name="HeatStored">All heat in the house at the end. [J/m²]</param>
public sealed record HouseRun(
    HouseOptions Options,
    SimCalendar Calendar,
    HouseMinute[] Minutes,
    IReadOnlyList<WateringEvent> Waterings,
    IReadOnlyList<double[]> PotMl,
    HouseBook Book,
    double WaterStored,
    double HeatStored);
