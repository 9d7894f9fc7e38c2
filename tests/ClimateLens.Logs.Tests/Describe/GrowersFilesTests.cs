using System.Globalization;
using System.Text;
using ClimateLens.Logs.Describe;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests.Describe;

/// <summary>Files as growers have them, each with something that a draft once got wrong.</summary>
public sealed class GrowersFilesTests : IDisposable
{
    private const int Rows = 60;
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Date Time, GMT+02:00", "\"+02:00\"")]
    [InlineData("Time (UTC-5)", "\"-05:00\"")]
    [InlineData("Zeit (UTC +0530)", "\"+05:30\"")]
    [InlineData("time_utc", "\"UTC\"")]
    [InlineData("Time GMT+0", "\"UTC\"")]
    [InlineData("Local time (UTC+1)", null)]
    [InlineData("Time", null)]
    public void ZoneInTheHeaderOfTheTime_IsTheZone(string header, string? zone)
        => Assert.Equal(zone, Draft($"\"{header}\",Temp (°C),RH (%)\n", (t, i) => $"{t:yyyy-MM-dd HH:mm},{T(i)},{80 - (i % 9)}").Time.SingleOrDefault(k => k.Key == "timeZone")?.Values[0]);

    [Fact]
    public void ZoneInATitle_IsAsked()
        => Assert.True(Draft("All times UTC+01:00;;\nTime;Temp (°C);RH (%)\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};{80 - (i % 9)}").Time.Single(k => k.Key == "timeZone").IsAsked);

    [Fact]
    public void CommaBetweenCellsAndInNumbers_IsRefused()
    {
        Description description = Describe("Date,Time,Temp,RH\n", (t, i) => $"{t:dd/MM/yyyy},{t:HH:mm},18,{i % 10},8{i % 9},5");
        Assert.Empty(description.Exports);
        Assert.Contains("decimal marks", Assert.Single(description.Problems).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void MoreCellsThanNames_AreAskedAbout()
        => Assert.All(Draft("Time;Temp;RH\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};8{i % 9}.5;{i % 7}.5").Columns, c => Assert.Equal(Sureness.Unsure, c.Sureness));

    [Fact]
    public void HeaderThatChangesInTheMiddle_DoesNotLoseTheRowsAbove()
    {
        DraftExport draft = Draft("Time,Temp,RH\n", (t, i) => $"{(i == 30 ? "No,Time,RH,Temp\n" : "")}{(i < 30 ? "" : $"{i},")}{t:yyyy-MM-dd HH:mm},{(i < 30 ? $"{T(i)},8{i % 9}" : $"8{i % 9},{T(i)}")}");
        Assert.Equal("1", draft.Keys.Single(k => k.Key == "headerRow").Values[0]);
        Assert.Contains(draft.Notes, n => n.StartsWith("a trial reading took 60 of 61 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void HousesInAColumnOfALongTable_HaveADraftEach()
        => Assert.Equal(["1", "2"], Describe("Date;Zone;Temp(C);Hum(%)\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};House 1;{T(i)};80.5\n{t:yyyy-MM-dd HH:mm};House 2;{T(i)};75.5").Exports.Select(e => e.House));

    [Fact]
    public void HousesAsLettersInFrontOfNames_HaveADraftEach_AndWhatIsOfNoneIsListed()
    {
        Description description = Describe("Time;H1 Temp;H1 RH;H2 Temp;H2 RH;CO2\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};80.5;{T(i)};75.5;{600 + i}");
        Assert.Equal(["1", "2"], description.Exports.Select(e => e.House));
        Assert.Contains(description.Exports[0].Unused, u => u.Header == "CO2" && u.Reason.Contains("of which house", StringComparison.Ordinal));
    }

    [Fact]
    public void UnitsBehindTheNumbers_AreRead()
    {
        DraftExport draft = Draft("Zeit;Temperatur;Feuchte;CO₂\n", (t, i) => $"{t:dd.MM.yyyy HH:mm};{T(i).Replace('.', ',')} °C;{80 - (i % 9)} %;{600 + i} ppm");
        Assert.Equal(["\"airTemperature\" \"Cel\"", "\"relativeHumidity\" \"%\"", "\"carbonDioxide\" \"[ppm]\""], draft.Columns.Select(c => $"{c.Keys.Single(k => k.Key == "channel").Values[0]} {c.Keys.Single(k => k.Key == "unit").Values[0]}"));
        Assert.Contains(draft.Notes, n => n.EndsWith("could not read 0 cells", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("T pot", "mediumTemperature")]
    [InlineData("Temp. Topf", "mediumTemperature")]
    [InlineData("TSOIL", "mediumTemperature")]
    [InlineData("T glass", "")]
    [InlineData("Temp floor", "")]
    [InlineData("PTemp_C", "")]
    [InlineData("Temp spredning", "")]
    [InlineData("T tank", "")]
    [InlineData("Bench %RH", "relativeHumidity")]
    [InlineData("Etmaaltemperatuur", "")]
    [InlineData("24h avg temp", "")]
    [InlineData("Temp high limit", "")]
    [InlineData("Supply air temp", "")]
    [InlineData("Mattemperatuur", "mediumTemperature")]
    [InlineData("Planttemperatuur", "leafTemperature")]
    [InlineData("Temp. pianta", "?leafTemperature/canopyTemperature")]
    [InlineData("External probe °C", "?outsideTemperature/airTemperature")]
    [InlineData("Temp. Stellwand", "?airTemperature")]
    [InlineData("Day temp", "?airTemperature")]
    [InlineData("Soil", "?mediumTemperature")]
    public void TemperatureOfSomethingElse_IsNotTheAirs(string header, string channel)
        => Assert.Equal(channel, Beside(header, T));

    [Fact]
    public void AirTemperaturesFarFromEachOther_AreAskedAbout()
        => Assert.Equal(2, Draft("Time;T a;T b\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};{(i % 7) + 8}.5").Columns.Count(c => c.Sureness == Sureness.Unsure));

    [Theory]
    [InlineData("Rain Rate (in/hr)", "")]
    [InlineData("Strahlung J/cm²", "?radiationSum")]
    [InlineData("Mixing ratio [g/kg]", "")]
    [InlineData("HD g/kg", "")]
    [InlineData("Leaf VPD kPa", "")]
    [InlineData("Leaf Wet", "leafWetness")]
    [InlineData("WSPD m/s", "windSpeed")]
    [InlineData("Wind (Bft)", "")]
    [InlineData("Regen (pulsen)", "")]
    public void OtherColumn_IsWhatItIs(string header, string channel)
        => Assert.Equal(channel, Beside(header, i => $"{i % 5}"));

    [Theory]
    [InlineData("<html><table><tr><th>Date</th></tr>", "web page")]
    [InlineData("{\"time\":\"2025-10-13T00:00:00Z\",\"temp\":18.5}", "JSON")]
    public void NoTable_IsCalledWhatItIs(string text, string expected)
    {
        File.WriteAllText(Path.Combine(_folder.Path, "made.xls"), text + "\n" + text);
        Assert.Contains(expected, Assert.Single(FileDescriber.Describe([Path.Combine(_folder.Path, "made.xls")], new DescribeOptions(Folder: _folder.Path)).Problems).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void ValuesBehindATimeOfTheirOwn_AreAskedAbout()
        => Assert.Equal("airTemperature ?airTemperature", Channels(Draft("Time A;T A;Time B;T B\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};{t.AddMinutes(3):yyyy-MM-dd HH:mm};{T(i + 1)}").Columns));

    [Fact]
    public void TwoWritingsOfOneTime_AreNotAskedAbout()
        => Assert.Equal("airTemperature", Channels(Draft("Time;Time UTC;Temp °C\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{t.AddHours(-1):yyyy-MM-dd HH:mm};{T(i)}").Columns));

    [Fact]
    public void TimeOfAnEvent_IsNotTheTimeOfWhatStandsBehindIt()
        => Assert.Equal("airTemperature relativeHumidity", Channels(Draft("Time;Temp °C;Last watering;RH %\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};{t.AddDays(-1):yyyy-MM-dd} 06:00;80.5").Columns));

    [Fact]
    public void HumidityInTenths_IsAskedAbout()
        => Assert.Equal("airTemperature ?relativeHumidity", Channels(Draft("Time;Temp °C;RH\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};{800 + i}").Columns));

    [Fact]
    public void HoursSideBySide_AreRefusedForTheirTime()
        => Assert.Contains("no time of day", Assert.Single(Describe("Date;00:00;06:00;12:00;18:00\n", (t, i) => $"{t.Date.AddDays(i):dd/MM/yyyy};{T(i)};{T(i + 1)};{T(i + 2)};{T(i + 3)}").Problems).Found, StringComparison.Ordinal);

    [Fact]
    public void DateInTheFirstRowOfADayOnly_IsTold()
        => Assert.Contains(Draft("Date;Time;Temp;RH\n", (t, i) => $"{(i % 30 == 0 ? t.ToString("dd/MM/yyyy", CultureInfo.InvariantCulture) : "")};{t:HH:mm};{T(i)};80.5").Notes, n => n.StartsWith("rows without a whole time of their own: 58 of 60", StringComparison.Ordinal));

    private static string T(int i) => (18 + (i % 13 / 4.0)).ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>The channel of a column that stands beside the temperature of the air.</summary>
    private string Beside(string header, Func<int, string> value)
        => Channels(Draft($"Time;Temp inside °C;{header}\n", (t, i) => $"{t:yyyy-MM-dd HH:mm};{T(i)};{value(i)}").Columns.Where(c => c.Position == 3));

    private static string Channels(IEnumerable<DraftColumn> columns)
        => string.Join(' ', columns.Select(c => $"{(c.Sureness == Sureness.Unsure ? "?" : "")}{string.Join('/', c.Keys.Single(k => k.Key == "channel").Values.Select(v => v.Trim('"')))}"));

    private DraftExport Draft(string head, Func<DateTime, int, string> row) => Assert.Single(Describe(head, row).Exports);

    private Description Describe(string head, Func<DateTime, int, string> row)
    {
        string file = Path.Combine(_folder.Path, "made.csv");
        File.WriteAllText(file, head + string.Concat(Enumerable.Range(0, Rows).Select(i => row(new DateTime(2025, 10, 13, 0, 0, 0, DateTimeKind.Unspecified).AddMinutes(15 * i), i) + "\n")), new UTF8Encoding(false));
        return FileDescriber.Describe([file], new DescribeOptions(Folder: _folder.Path));
    }
}
