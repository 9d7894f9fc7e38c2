using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Weather;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using NodaTime;

namespace ClimateLens.Science.Tests.Balance;

/// <summary>Three weeks of run-in and a week of a house whose equations are not those of the balance, as true sensors would log them.</summary>
internal sealed class SimulatedHouse
{
    private const int RunInDay = 4, WeekDay = 25, Step = 5;
    private readonly ulong _seed;
    private readonly LocalDate _first;
    private readonly WeatherPoint[] _weather;
    private readonly HouseRun _run;

    public SimulatedHouse(ulong seed, HouseOptions? options = null)
    {
        _seed = seed;
        _first = new LocalDate(2025, 9, 15).PlusDays((int)(seed % 4) * 5);
        var calendar = new SimCalendar(At(_first), At(_first.PlusDays(WeekDay + 7)), GannetRow.Zone);
        _weather = WeatherMaker.Make(calendar, seed);
        _run = HouseSimulation.Run(options ?? GannetRow.HouseOne, calendar, _weather, seed);
    }

    public BalanceInputs RunIn => Logged(_run, RunInDay, WeekDay - RunInDay);

    public BalanceInputs Week => Logged(_run, WeekDay, 7);

    /// <summary>The week as it would truly have been.</summary>
    public BalanceInputs WeekUnder(Intervention what) => Logged(
        new InterventionPlan(_first.PlusDays(WeekDay), _first.PlusDays(WeekDay + 7), _ => 11 * 60).Replayed(_run, GannetRow.Zone, _weather, _seed, what), WeekDay, 7);

    private static Instant At(LocalDate day) => GannetRow.Zone.AtStartOfDay(day).ToInstant();

    private BalanceInputs Logged(HouseRun run, int firstDay, int days)
    {
        int first = firstDay * 1440, steps = days * 1440 / Step;
        double[] Column(Func<HouseMinute, WeatherPoint, double> value) =>
            [.. Enumerable.Range(0, steps).Select(i => first + ((i + 1) * Step)).Select(minute => value(run.Minutes[minute], _weather[minute - 1]))];
        double[] wetted = new double[steps];
        foreach (var watering in run.Waterings.Where(w => w.IsOverhead))
        {
            WettedShare.Add(wetted, (watering.StartMinute - first) / (double)Step, (watering.EndMinute - first) / (double)Step, watering.Share);
        }

        return new()
        {
            StepHours = Step / 60.0,
            Day = Enumerable.Range(0, steps).Select(i => firstDay + (i * Step / 1440)).ToArray(),
            HumidityGm3 = Column((m, _) => VapourDensity.Absolute(new Celsius(m.AirC), new RelativeHumidity(m.HumidityPct)).Value),
            AirC = Column((m, _) => m.AirC),
            OutsideGm3 = Column((_, w) => 1000 * w.VapourKgM3),
            SunWm2 = Column((_, w) => 0.66 * w.RadiationWm2),
            Cover = Column((m, _) => m.Cover),
            Vent = Column((m, _) => (m.LeePct + m.WindPct) / 200),
            WindMs = Column((_, w) => w.WindMs),
            CoverC = Column((m, w) => w.TemperatureC + (0.35 * (m.AirC - w.TemperatureC))), // nobody logs it: a rough guess, as good as an export allows
            LeafWetted = wetted,
        };
    }
}
