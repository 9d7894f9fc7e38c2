using System.Globalization;
using System.Text;
using ClimateLens.HouseSimulator.Physics;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.HouseSimulator;

/// <summary>A run day by day and week by week in plain lines, to look at critically.</summary>
public static class Summary
{
    public static string Of(NurseryRun run)
    {
        var text = new StringBuilder();
        for (LocalDate date = GannetRow.FirstDay; date <= GannetRow.LastDay; date = date.PlusDays(1))
        {
            Day(text, run, date);
        }

        foreach (HouseRun house in run.Houses)
        {
            for (LocalDate monday = GannetRow.FirstDay; monday < GannetRow.LastDay; monday = monday.PlusDays(7))
            {
                HouseMinute[] week = house.Minutes[Range(house, monday, 7)];
                Line(text, $"House {house.Options.Id}, week of {monday:MM-dd}: air margin < 2 K {Hours(week, m => m.AirMarginK < 2)} h, leaf margin < 1 K {Hours(week, m => m.LeafMarginK < 1)} h, leaves wet {Hours(week, m => m.FilmMm > Truth.TruthWriter.WetFilmMm)} h");
            }
        }

        return text.ToString();
    }

    private static void Day(StringBuilder text, NurseryRun run, LocalDate date)
    {
        WeatherPoint[] outside = run.Weather[Range(run.HouseOne, date, 1)];
        Line(text, $"{date:MM-dd ddd} outside {outside.Min(w => w.TemperatureC):F1}..{outside.Max(w => w.TemperatureC):F1} °C {outside.Min(w => w.HumidityPct):F0}..{outside.Max(w => w.HumidityPct):F0} %  sun {outside.Sum(w => w.RadiationWm2) * 60e-6:F1} MJ  wind {outside.Average(w => w.WindMs):F1} m/s  rain {outside.Sum(w => w.RainMm):F1} mm");
        foreach (HouseRun house in run.Houses)
        {
            HouseMinute[] m = house.Minutes[Range(house, date, 1)];
            double vpd = m[600..960].Average(x => (1 - (x.HumidityPct / 100)) * SaturatedAir.PressureKPa(x.AirC));
            Line(text, $"   {house.Options.Id}: {m.Min(x => x.AirC):F1}..{m.Max(x => x.AirC):F1} °C {m.Min(x => x.HumidityPct):F0}..{m.Max(x => x.HumidityPct):F0} % canopy to {m.Max(x => x.CanopyHumidityPct):F0} %  VPD by day {vpd:F2} kPa  margin < 2 K {Hours(m, x => x.AirMarginK < 2)} h  leaf < 1 K {Hours(m, x => x.LeafMarginK < 1)} h  wet {Hours(m, x => x.FilmMm > Truth.TruthWriter.WetFilmMm)} h  leaf-air {m.Min(x => x.LeafC - x.AirC):F1}..{m.Max(x => x.LeafC - x.AirC):F1} K");
            Line(text, $"      pipe to {m.Max(x => x.PipeC):F0} °C  lee {m.Average(x => x.LeePct):F0} %  screen {m.Average(x => x.ScreenPct):F0} %  transpired {Mm(m, x => x.TranspirationGm2H)} film {Mm(m, x => x.FilmEvaporationGm2H)} floor {Mm(m, x => x.FloorEvaporationGm2H)} glass {Mm(m, x => x.GlassDewGm2H)} mm  pots {m.Average(x => x.PotLevel):F1}  CO2 {m.Min(x => x.CarbonDioxidePpm):F0}..{m.Max(x => x.CarbonDioxidePpm):F0} ppm  cover {m[^1].Cover:F2}  {Waterings(house, date)}");
        }
    }

    private static string Waterings(HouseRun house, LocalDate date)
        => string.Join(' ', house.Waterings
            .Where(w => house.Calendar.Local(w.StartMinute).Date == date)
            .Select(w => FormattableString.Invariant($"{w.Method} {w.Bench} {house.Calendar.Local(w.StartMinute):HH:mm} {w.LitresPerM2:F1} L/m2;")));

    private static Range Range(HouseRun house, LocalDate date, int days)
        => house.Calendar.MinuteOf(GannetRow.Zone.AtStartOfDay(date).ToInstant())
            ..house.Calendar.MinuteOf(GannetRow.Zone.AtStartOfDay(date.PlusDays(days)).ToInstant());

    private static string Hours(HouseMinute[] minutes, Func<HouseMinute, bool> when)
        => (minutes.Count(when) / 60.0).ToString("F1", CultureInfo.InvariantCulture);

    private static string Mm(HouseMinute[] minutes, Func<HouseMinute, double> gm2H)
        => (minutes.Average(gm2H) * minutes.Length / 60_000).ToString("F2", CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, FormattableString line)
        => text.Append(FormattableString.Invariant(line)).Append('\n');
}
