using System.Globalization;
using System.Text.Json;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Scenario;
using NodaTime;

namespace ClimateLens.EndToEnd.Tests.Simulator;

public class ExportFilesTests
{
    private static readonly string[] Months = ["2025-09", "2025-10", "2025-11"];

    [Theory]
    [InlineData("exports/house-1-2025-10.csv", "26-10-2025 01:", "26-10-2025 00:55", "26-10-2025 02:00")]
    [InlineData("exports/house-2-2025-10.csv", "2025-10-26 01:", "2025-10-26 00:55:00", "2025-10-26 02:00:00")]
    public void LocalExport_NightTheClocksGoBack_RepeatsTheHourInOrder(string file, string hour, string before, string after)
    {
        string[] stamps = [.. Gannet.Lines(file).Select(line => line.Split(';', ',')[0])];
        int first = Array.IndexOf(stamps, before) + 1;
        string[] expected = [.. Enumerable.Range(0, 24).Select(i => FormattableString.Invariant($"{hour}{i % 12 * 5:00}"))];
        Assert.Equal(expected, stamps.Skip(first).Take(24).Select(stamp => stamp[..16]));
        Assert.Equal(after, stamps[first + 24]);
        Assert.Equal(24, stamps.Count(stamp => stamp.StartsWith(hour, StringComparison.Ordinal)));
    }

    [Fact]
    public void Exports_AllFiles_HoldEveryStepButTheGap()
    {
        int steps = (Gannet.Run.HouseOne.Calendar.Minutes - Gannet.Run.FirstMinute) / 5;
        Assert.Equal((70 * 288) + 12, steps); // seventy days, one of them an hour longer
        Assert.Equal(steps - 64, Rows("exports/house-1-", 2)); // five hours and twenty minutes missing
        Assert.Equal(steps, Rows("exports/house-2-", 1) - (Gannet.Lines(PlantedDefects.Duplicate).Length - 1));
        Assert.Equal(steps / 2, Rows("exports/weather-", 1));
    }

    [Fact]
    public void Defects_AsTruthListsThem_StandInTheExports()
    {
        using JsonDocument truth = JsonDocument.Parse(Gannet.Files.Files["truth/defects.json"]);
        JsonElement[] defects = [.. truth.RootElement.GetProperty("defects").EnumerateArray()];
        Assert.Equal(["gap", "spike", "stuck", "spike", "missingCode", "duplicateFile"], defects.Select(d => d.GetProperty("kind").GetString()));
        foreach (JsonElement defect in defects)
        {
            string[] files = [.. defect.GetProperty("files").EnumerateArray().Select(f => f.GetString()!)];
            string[][] rows = Within(files[0], Text(defect, "fromLocal"), Text(defect, "untilLocal"));
            Check(Text(defect, "kind"), Text(defect, "source"), files, rows);
        }
    }

    [Fact]
    public void Readings_AgainstTruth_DifferByTheSensorBias()
    {
        // The two Septembers are free of stuck sensors and missing codes; one spike and one gap hardly move a mean.
        Assert.Equal(0.1, MeanDifference("house-1-2025-09", ';', 1, m => m.AirC), 0.03);
        Assert.Equal(0.8, MeanDifference("house-1-2025-09", ';', 2, m => m.HumidityPct), 0.15);
        Assert.Equal(-0.1, MeanDifference("house-2-2025-09", ',', 1, m => m.AirC), 0.03);
        Assert.Equal(-0.6, MeanDifference("house-2-2025-09", ',', 2, m => m.HumidityPct), 0.15);
    }

    [Fact]
    public void ValveColumns_OpenMinutes_AreThoseOfTheTrueWaterings()
    {
        int trueMinutes = Gannet.Run.HouseTwo.Waterings.Where(w => w.StartMinute >= Gannet.Run.FirstMinute).Sum(w => w.Minutes);
        int open = Months
            .SelectMany(month => Gannet.Lines($"exports/house-2-{month}.csv").Skip(1))
            .Select(line => line.Split(','))
            .Sum(fields => (fields[8] == "1" ? 1 : 0) + (fields[9] == "1" ? 1 : 0));
        Assert.True(trueMinutes > 200);
        Assert.Equal(trueMinutes, 5 * open);
    }

    private static int Rows(string prefix, int headers)
        => Gannet.Files.Files.Keys.Where(path => path.StartsWith(prefix, StringComparison.Ordinal)).Sum(path => Gannet.Lines(path).Length - headers);

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    // Fields of the rows within [from, until), and the fields of the row before them first.
    private static string[][] Within(string file, string from, string until)
    {
        bool houseOne = file.Contains("house-1", StringComparison.Ordinal);
        string[][] rows = [.. Gannet.Lines(file).Skip(houseOne ? 2 : 1).Select(line => line.Split(houseOne ? ';' : ','))];
        string Stamp(string[] row) => houseOne
            ? $"{row[0][6..10]}-{row[0][3..5]}-{row[0][..2]} {row[0][11..]}"
            : row[0][..16];
        int first = Array.FindIndex(rows, row => string.CompareOrdinal(Stamp(row), from) >= 0);
        string[][] found = [.. rows.Skip(first).TakeWhile(row => string.CompareOrdinal(Stamp(row), until) < 0)];
        return [rows[Math.Max(0, first - 1)], .. found];
    }

    private static void Check(string kind, string source, string[] files, string[][] rows)
    {
        string[][] hit = rows[1..];
        int column = source == "house-1" ? 1 : 2; // the air temperature of House 1, the humidity of House 2
        switch (kind)
        {
            case "gap":
                Assert.Empty(hit);
                break;
            case "stuck":
                Assert.Equal(14 * 12, hit.Length);
                Assert.Single(hit.Select(row => row[column]).Distinct());
                Assert.True(hit.Select(row => row[column - 1]).Distinct().Count() > 5);
                break;
            case "spike":
                Assert.True(Math.Abs(Number(Assert.Single(hit)[column]) - Number(rows[0][column])) > 10);
                break;
            case "missingCode":
                Assert.Equal(288, hit.Length);
                Assert.All(hit, row => Assert.All(row[1..], field => Assert.Equal("-999", field)));
                break;
            default:
                Assert.Equal("duplicateFile", kind);
                Assert.Equal(2, files.Length);
                Assert.Equal(Gannet.Files.Sha256(files[0]), Gannet.Files.Sha256(files[1]));
                break;
        }
    }

    private static double Number(string field) => double.Parse(field.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture);

    private static double MeanDifference(string file, char delimiter, int column, Func<HouseMinute, double> truth)
    {
        bool houseOne = delimiter == ';';
        HouseRun run = houseOne ? Gannet.Run.HouseOne : Gannet.Run.HouseTwo;
        return Gannet.Lines($"exports/{file}.csv").Skip(houseOne ? 2 : 1).Select(line => line.Split(delimiter)).Average(row =>
        {
            var pattern = NodaTime.Text.LocalDateTimePattern.CreateWithInvariantCulture(houseOne ? "dd-MM-uuuu HH:mm" : "uuuu-MM-dd HH:mm:ss");
            Instant at = GannetRow.Zone.AtStrictly(pattern.Parse(row[0]).Value).ToInstant();
            return Number(row[column]) - truth(run.Minutes[run.Calendar.MinuteOf(at)]);
        });
    }
}
