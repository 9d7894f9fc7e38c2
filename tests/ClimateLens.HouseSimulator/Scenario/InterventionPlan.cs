using ClimateLens.HouseSimulator.Control;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Physics;
using ClimateLens.HouseSimulator.Watering;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.HouseSimulator.Scenario;

/// <summary>How the interventions are carried out, and in which days; all before them stays as it was.</summary>
/// <param name="From">First local day.</param>
/// <param name="Until">Day after the last; the simulation ends there.</param>
/// <param name="CutOff">Time of day by which waterings that wet leaves are done, by day. [min after local midnight]</param>
/// <param name="SpacingFactor">Distance of pots to that before.</param>
/// <param name="DawnFromHour">Full local hour from which heat and vent are held. [h]</param>
/// <param name="DawnUntilHour">Full local hour up to which they are. [h]</param>
/// <param name="MinimumPipeC">Pipe temperature then. [°C]</param>
/// <param name="MinimumLeePct">Opening of the lee vents then. [%]</param>
public sealed record InterventionPlan(
    LocalDate From, LocalDate Until, Func<LocalDate, int> CutOff,
    double SpacingFactor = 1.2, int DawnFromHour = 4, int DawnUntilHour = 7, double MinimumPipeC = 40, double MinimumLeePct = 8)
{
    /// <summary>The house once more under the same weather, with something done otherwise; it ends with the plan.</summary>
    /// <param name="run">The house as it was.</param>
    /// <param name="zone">Zone of its clock.</param>
    /// <param name="weather">The weather of the run.</param>
    /// <param name="seed">The seed of the run.</param>
    /// <param name="what">What is done.</param>
    public HouseRun Replayed(HouseRun run, DateTimeZone zone, WeatherPoint[] weather, ulong seed, Intervention what)
    {
        var calendar = new SimCalendar(run.Calendar.Start, zone.AtStartOfDay(Until).ToInstant(), zone);
        WateringEvent[] waterings = [.. run.Waterings.Where(w => w.StartMinute < calendar.Minutes).GroupBy(w => calendar.Local(w.StartMinute).Date)
            .SelectMany(day => Within(day.Key) ? Changed(run, calendar, [.. day], what) : day)];
        HouseOptions options = run.Options with
        {
            Crop = what.HasFlag(Intervention.WiderSpacing) ? Wider(run.Options.Crop) : run.Options.Crop,
            Dawn = what.HasFlag(Intervention.HeatAndVentBeforeSunrise)
                ? new DawnControl(From, Until, DawnFromHour, DawnUntilHour, MinimumPipeC, MinimumLeePct) : run.Options.Dawn,
            Watering = new ListedWatering([.. waterings.OrderBy(w => w.StartMinute)]),
        };
        return HouseSimulation.Run(options, calendar, weather, seed);
    }

    private bool Within(LocalDate day) => day >= From && day < Until;

    private IEnumerable<WateringEvent> Changed(HouseRun run, SimCalendar calendar, WateringEvent[] day, Intervention what)
    {
        if (what.HasFlag(Intervention.WaterBeforeCutOff))
        {
            day = [.. DoneBy(calendar, day)];
        }

        return what.HasFlag(Intervention.WaterOffLeaves)
            ? day.Select(w => w.IsOverhead
                ? w with { Method = "drip", LitresPerM2 = w.LitresPerM2 * HouseWater.ShareCaught(run.Options.Crop.DensityPerM2(calendar.Local(w.StartMinute))) }
                : w)
            : day;
    }

    /// <summary>Those that end too late all move together, so that the last ends at the cut-off.</summary>
    private IEnumerable<WateringEvent> DoneBy(SimCalendar calendar, WateringEvent[] day)
    {
        int Late(WateringEvent w) => w.IsOverhead
            ? calendar.LocalMinuteOfDay(w.StartMinute) + w.Minutes - CutOff(calendar.Local(w.StartMinute).Date)
            : 0;
        int earlier = Math.Max(0, day.Max(Late));
        return day.Select(w => Late(w) > 0 ? w with { StartMinute = w.StartMinute - earlier } : w);
    }

    // Spacing counts from noon, so the day before the first: the plan's days are then wholly as planned.
    private CropPlan Wider(CropPlan crop)
    {
        LocalDate moved = From.PlusDays(-1);
        double distance = SpacingFactor / Math.Sqrt(crop.DensityPerM2(From.AtMidnight()));
        return crop with { Steps = [.. crop.Steps.Where(s => s.From < moved), new Spacing(moved, distance)] };
    }
}
