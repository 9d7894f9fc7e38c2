using System.Text;
using System.Text.Json;
using ClimateLens.HouseSimulator.Output;
using ClimateLens.HouseSimulator.Records;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Watering;
using NodaTime;

namespace ClimateLens.HouseSimulator.Truth;

/// <summary>Writes what really was, for tests. The product never reads it.</summary>
public static class TruthWriter
{
    /// <summary>Leaves count as wet above this film. [mm]</summary>
    public const double WetFilmMm = 0.005;

    private static readonly (string Name, string Pattern, Func<HouseMinute, double> Value)[] Means =
    [
        ("airC", "0.00", m => m.AirC),
        ("rhPct", "0.00", m => m.HumidityPct),
        ("dewPointC", "0.00", m => m.DewPointC),
        ("leafC", "0.00", m => m.LeafC),
        ("leafMarginK", "0.00", m => m.LeafMarginK),
        ("canopyC", "0.00", m => m.CanopyC),
        ("canopyRhPct", "0.00", m => m.CanopyHumidityPct),
        ("filmMm", "0.0000", m => m.FilmMm),
        ("wetMinutes", "0", m => m.FilmMm > WetFilmMm ? 60 : 0),
        ("airMarginUnder2Minutes", "0", m => m.AirMarginK < 2 ? 60 : 0),
        ("leafMarginUnder1Minutes", "0", m => m.LeafMarginK < 1 ? 60 : 0),
        ("cover", "0.000", m => m.Cover),
        ("transpirationGm2h", "0.0", m => m.TranspirationGm2H),
        ("filmEvaporationGm2h", "0.0", m => m.FilmEvaporationGm2H),
        ("floorEvaporationGm2h", "0.0", m => m.FloorEvaporationGm2H),
        ("ventilatedGm2h", "0.0", m => m.VentilatedGm2H),
        ("glassDewGm2h", "0.0", m => m.GlassDewGm2H),
        ("potLevel", "0.00", m => m.PotLevel),
    ];

    public static void Write(FileSet files, NurseryRun run)
    {
        foreach (HouseRun house in run.Houses)
        {
            files.Add($"truth/house-{house.Options.Id}-hours.csv", Hours(house, run.FirstMinute));
        }

        files.Add("truth/waterings.csv", Waterings(run));
        files.Add("truth/scenario.json", Scenario(run));
        files.Add("truth/defects.json", Defects());
    }

    // An hour's mean is over the sixty states from its first minute to its last.
    private static string Hours(HouseRun house, int firstMinute)
    {
        var csv = new CsvText(["startUtc", .. Means.Select(m => m.Name)]);
        for (int minute = firstMinute; minute + 60 <= house.Calendar.Minutes; minute += 60)
        {
            HouseMinute[] hour = house.Minutes[minute..(minute + 60)];
            csv.Row([Utc(house.Calendar.At(minute)), .. Means.Select(m => CsvText.Number(hour.Average(m.Value), m.Pattern))]);
        }

        return csv.ToString();
    }

    private static string Waterings(NurseryRun run)
    {
        var csv = new CsvText("house", "startUtc", "endUtc", "method", "litresPerM2OfBench", "bench");
        foreach (HouseRun house in run.Houses)
        {
            foreach (WateringEvent watering in house.Waterings.Where(w => w.StartMinute >= run.FirstMinute))
            {
                csv.Row(
                    house.Options.Id,
                    Utc(house.Calendar.At(watering.StartMinute)),
                    Utc(house.Calendar.At(watering.EndMinute)),
                    watering.Method,
                    CsvText.Number(watering.LitresPerM2, "0.00"),
                    watering.Bench);
            }
        }

        return csv.ToString();
    }

    private static string Scenario(NurseryRun run) => Json(json =>
    {
        json.WriteNumber("seed", run.Seed);
        json.WriteNumber("wetFilmMm", WetFilmMm);
        json.WriteStartArray("houses");
        foreach (HouseOptions house in run.Houses.Select(h => h.Options))
        {
            json.WriteStartObject();
            json.WriteString("id", house.Id);
            json.WriteNumber("airTemperatureBiasK", (decimal)house.TemperatureBiasK);
            json.WriteNumber("relativeHumidityBiasPct", (decimal)house.HumidityBiasPct);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("graders");
        foreach (Grader grader in Grader.All)
        {
            json.WriteStartObject();
            json.WriteString("initials", grader.Initials);
            json.WriteNumber("bias", (decimal)grader.Bias);
            json.WriteNumber("deviation", (decimal)grader.Deviation);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static string Defects() => Json(json =>
    {
        json.WriteStartArray("defects");
        foreach (Defect defect in PlantedDefects.All)
        {
            json.WriteStartObject();
            json.WriteString("kind", defect.Kind);
            json.WriteString("source", defect.Source);
            Strings(json, "channels", defect.Channels);
            json.WriteString("fromLocal", CsvText.Time(defect.From));
            json.WriteString("untilLocal", CsvText.Time(defect.Until));
            json.WriteString("fromUtc", Utc(GannetRow.Zone.AtStrictly(defect.From).ToInstant()));
            json.WriteString("untilUtc", Utc(GannetRow.Zone.AtStrictly(defect.Until).ToInstant()));
            Strings(json, "files", defect.Files);
            json.WriteString("note", defect.Note);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void Strings(Utf8JsonWriter json, string name, IReadOnlyList<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    private static string Json(Action<Utf8JsonWriter> body)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static string Utc(Instant at) => NodaTime.Text.InstantPattern.General.Format(at);
}
