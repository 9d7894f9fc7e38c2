using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Truth;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Records;

/// <summary>What is noted once a week: plant widths, tanks, floors, scouting.</summary>
public sealed class WeeklyBooks(NurseryRun run)
{
    private const int PlantsMeasured = 10;

    /// <summary>Width of ten tagged plants a house, Mondays, to half a centimetre. [cm]</summary>
    public string PlantWidths()
    {
        SeededRandom random = Seeds.Stream(run.Seed, "plant widths");
        var csv = new CsvText("date", "house", "bench", "plant", "width");
        double[] vigour = [.. Enumerable.Range(0, 2 * PlantsMeasured).Select(_ => 1 + (0.06 * random.NextNormal()))];
        foreach (LocalDateTime time in Every(IsoDayOfWeek.Monday, 10))
        {
            for (int plant = 0; plant < vigour.Length; plant++)
            {
                HouseRun house = run.Houses[plant / PlantsMeasured];
                int number = plant % PlantsMeasured;
                double widthCm = 100 * house.Options.Crop.WidthM(time) * vigour[plant] * (1 + (0.02 * random.NextNormal()));
                csv.Row(
                    CsvText.Time(time.PlusMinutes(plant * 2)),
                    house.Options.Id,
                    number < PlantsMeasured / 2 ? "A" : "B",
                    CsvText.Number(number + 1, "0"),
                    CsvText.Number(Math.Round(2 * widthCm) / 2, "0.0"));
            }
        }

        return csv.ToString();
    }

    /// <summary>The rain-water tank that feeds both houses, Mondays.</summary>
    public string Tanks()
    {
        SeededRandom random = Seeds.Stream(run.Seed, "tanks");
        var acidity = new Wanderer(random, 4, 0.15);
        var salt = new Wanderer(random, 4, 0.12);
        var csv = new CsvText("time", "tank", "house", "what", "reading", "unit");
        foreach (LocalDateTime time in Every(IsoDayOfWeek.Monday, 8))
        {
            foreach (HouseRun house in run.Houses)
            {
                csv.Row(CsvText.Time(time), "feed tank", house.Options.Id, "pH", CsvText.Number(5.9 + acidity.Next(), "0.0"), "pH");
                csv.Row(CsvText.Time(time), "feed tank", house.Options.Id, "EC", CsvText.Number(1.5 + salt.Next(), "0.00"), "mS/cm");
            }
        }

        return csv.ToString();
    }

    /// <summary>Floors and benches, Fridays.</summary>
    public static string Floors()
    {
        var csv = new CsvText("time", "house", "bench", "what", "activeIngredient", "operator", "note");
        int week = 0;
        foreach (LocalDateTime time in Every(IsoDayOfWeek.Friday, 13))
        {
            csv.Row(CsvText.Time(time), "1", "A", "swept", "", "MB", "");
            csv.Row(CsvText.Time(time.PlusMinutes(40)), "2", "", "swept", "", "MB", "");
            if (++week % 4 == 0)
            {
                csv.Row(CsvText.Time(time.PlusMinutes(90)), "1", "B", "path disinfected", "hydrogen peroxide", "KL", "algae near the boom rail");
            }
        }

        return csv.ToString();
    }

    /// <summary>Plants with grey mould among fifty looked at, Tuesdays: more where leaves were wet in the two weeks before.</summary>
    public string Scouting()
    {
        SeededRandom random = Seeds.Stream(run.Seed, "scouting");
        var csv = new CsvText("time", "house", "bench", "symptom", "count", "operator");
        foreach (LocalDateTime time in Every(IsoDayOfWeek.Tuesday, 9).Skip(2))
        {
            foreach (HouseRun house in run.Houses)
            {
                int now = house.Calendar.MinuteOf(GannetRow.Zone.AtStrictly(time).ToInstant());
                int wet = house.Minutes[(now - 20160)..now].Count(m => m.FilmMm > TruthWriter.WetFilmMm);
                double share = Math.Min(0.3, 0.005 + (0.0012 * wet / 60));
                int count = Enumerable.Range(0, 50).Count(_ => random.NextDouble() < share);
                csv.Row(CsvText.Time(time), house.Options.Id, "", "grey mould", CsvText.Number(count, "0"), "KL");
            }
        }

        return csv.ToString();
    }

    private static IEnumerable<LocalDateTime> Every(IsoDayOfWeek day, int hour)
    {
        for (LocalDate date = GannetRow.FirstDay; date <= GannetRow.LastDay; date = date.PlusDays(1))
        {
            if (date.DayOfWeek == day)
            {
                yield return date.At(new LocalTime(hour, 0));
            }
        }
    }
}
