using System.Globalization;
using System.Text;
using System.Text.Json;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Logs.Tests;

public sealed class SheetTests
{
    private const string Sun = TestNursery.Climate + "\n" + """
          [[export.column]]
          field = "sun"
          channel = "globalRadiation"
          unit = "W/m2"
        """;

    [Fact]
    public void Sheet_OfAMessyFile_TellsWhatBecameOfIt()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh,note,\n2025-07-01T10:00,20,80,x,\n2025-07-01T10:05,21,-999,x,\nx,1,1,1,\n\n2025-07-01T10:05,21,,x,\n1,2\n2025-07-01T10:10,22,hot,x,\n2025-07-01T11:10,27,70,x,\nx,1,1,1,\n");
        ImportSheet sheet = Assert.Single(nursery.Import().Sheets);
        ImportDetails details = sheet.Details!;
        Assert.Equal((9, 4, 3, 1, 1, 1), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Duplicates, sheet.Blank, sheet.CellsNotRead));
        Assert.Equal(["import.fields Row 1: 7", "import.number Cell 1: 8", "import.time Row 2: 4,10"], details.Reasons.Select(Text));
        Assert.Equal((300, 2 / 3.0), (details.StepSeconds!.Value, details.StepShare!.Value));
        Assert.Equal((1, 55 / 60.0), (details.Gaps!.Count, details.Gaps.MissingHours));
        Assert.Equal(new FileGap(Instant.FromUtc(2025, 7, 1, 9, 10), Instant.FromUtc(2025, 7, 1, 10, 10)), Assert.Single(details.Gaps.Longest));
        Assert.Equal(["note", "column 5"], details.UnusedColumns.ToArray());
        Assert.Equal(new TimeFormatCount("iso", 5), Assert.Single(details.TimeFormats));
        Assert.Equal(new ImportDialect("utf-8", ",", "\"", ".", "", 1), details.Dialect);
        Assert.Equal([new ChannelSummary("airTemperature", "", 4, 0, 20, 21.5, 27), new ChannelSummary("relativeHumidity", "", 2, 0.5, 70, 75, 80)], details.Channels.ToArray());
        Assert.Equal(ClockVerdict.NotKnown, details.Clock!.Verdict);
    }

    [Fact]
    public void Sheet_InTheStore_HoldsTheSame_AndComesBackWithTheNextRun()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n2025-07-01T10:05,21,80\nx,1,1\n");
        ImportDetails imported = nursery.Import().Sheets[0].Details!;
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Assert.Single(Sheets(nursery))));
        Assert.Equal("a.csv", json.RootElement.GetProperty("file").GetString());
        Assert.Equal(3, json.RootElement.GetProperty("rowsRead").GetInt32());
        Assert.Equal("2025-07-01T09:05:00Z", json.RootElement.GetProperty("last").GetString());
        Assert.Equal("row", json.RootElement.GetProperty("details").GetProperty("reasons")[0].GetProperty("kind").GetString());
        ImportDetails loaded = Assert.Single(nursery.Load().Files).Details!;
        Assert.Equal(Flat(imported), Flat(loaded));
    }

    [Fact]
    public void Sheet_FilesOfOneNameInTwoFolders_AndOneFileOfTwoExports_HaveSheetsOfTheirOwn()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("*.csv", "**/*.csv", StringComparison.Ordinal) + "\n" + TestNursery.Climate.Replace("house = \"1\"", "house = \"2\"", StringComparison.Ordinal).Replace("*.csv", "x/a.csv", StringComparison.Ordinal));
        nursery.Write("x/a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        nursery.Write("y/a.csv", "time,temp,rh\n2025-07-01T10:05,20,80\n");
        nursery.Import();
        string[] sheets = Sheets(nursery);
        Assert.Equal(3, sheets.Length);
        Assert.All(sheets, path => Assert.StartsWith("a.csv.", Path.GetFileName(path), StringComparison.Ordinal));
        string[] owners = [.. sheets.Select(path => JsonDocument.Parse(File.ReadAllText(path)).RootElement).Select(s => $"{s.GetProperty("house").GetString()} {s.GetProperty("file").GetString()}").Order(StringComparer.Ordinal)];
        Assert.Equal(["1 x/a.csv", "1 y/a.csv", "2 x/a.csv"], owners);
    }

    [Theory]
    [InlineData("delete")]
    [InlineData("truncate")]
    public void Sheet_Lost_IsMadeAgain(string how)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        nursery.Import();
        var before = nursery.StoreFiles();
        string sheet = Assert.Single(Sheets(nursery));
        if (how == "delete")
        {
            File.Delete(sheet);
        }
        else
        {
            File.WriteAllText(sheet, "{");
        }

        Assert.Null(Assert.Single(nursery.Load().Files).Details);
        Assert.Contains(nursery.Import().Problems, p => p.Code == "store.damaged");
        Assert.Equal(before, nursery.StoreFiles());
    }

    [Fact]
    public void Sheet_OfAFileThatIsGone_IsNotAskedForAgain()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        string path = nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:05,20,80\n");
        nursery.Import();
        File.Delete(path);
        File.Delete(Sheets(nursery).Single(s => Path.GetFileName(s).StartsWith("b.csv", StringComparison.Ordinal)));
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(2, nursery.Rows().Length);
    }

    [Fact]
    public void Sheet_MovedNursery_HoldsTheClockAgainstTheNewPlace()
    {
        using var nursery = new TestNursery(Sun);
        nursery.Write("a.csv", Sky(0, 8));
        Assert.Equal(ClockVerdict.Right, nursery.Import().Sheets[0].Details!.Clock!.Verdict);
        nursery.SetPlace(Sun, 53, 60);
        ClockCheck moved = nursery.Import().Sheets[0].Details!.Clock!;
        Assert.Equal(ClockVerdict.Wrong, moved.Verdict);
        Assert.Equal(240, moved.Spells[0].OffsetMin, 8.0);
        Assert.Equal(Flat(nursery.Load().Files[0].Details!), Flat(nursery.Load().Files[0].Details!));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(60)]
    public void Sheet_ClockOfAFile_ReadFromItsLight(int aheadMin)
    {
        using var nursery = new TestNursery(Sun, "Europe/London");
        nursery.Write("a.csv", Sky(aheadMin, 10, stepMinutes: 1));
        ClockCheck clock = nursery.Import().Sheets[0].Details!.Clock!;
        Assert.Equal(aheadMin == 0 ? ClockVerdict.Right : ClockVerdict.Wrong, clock.Verdict);
        Assert.Equal(aheadMin, clock.Spells[0].OffsetMin, 8.0);
    }

    [Fact]
    public void Sheet_OfALongFile_HasAMedianOfRowsDrawnEvenly()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        var text = new StringBuilder("time,temp,rh\n");
        for (int i = 0; i < 40_000; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{new DateTime(2025, 1, 1).AddMinutes(i):yyyy-MM-dd'T'HH:mm}Z,{i % 1000 / 10.0:0.0},{(i < 100 ? 10 : 90)}\n");
        }

        nursery.Write("a.csv", text.ToString());
        ChannelSummary temperature = nursery.Import().Sheets[0].Details!.Channels[0];
        Assert.Equal((40_000, 0, 99.9), (temperature.Count, temperature.Min!.Value, temperature.Max!.Value));
        Assert.InRange(temperature.Median!.Value, 47, 53); // 2,048 of evenly spread rows: ±1.1 in standard deviation
    }

    [Fact]
    public void Sheet_OfRecords_HasReasonsAndNoSeries()
    {
        using var nursery = new TestNursery("""
            [[export]]
            name = "log"
            house = "1"
            kind = "waterings"
            files = ["*.csv"]
              [export.time]
              field = "when"
              format = "iso"
              [[export.column]]
              field = "what"
              channel = "method"
            """);
        nursery.Write("a.csv", "when,what,by\n2025-07-01T10:00,drip,me\nx,drip,me\n");
        ImportDetails details = nursery.Import().Sheets[0].Details!;
        Assert.Equal(["import.time Row 1: 3"], details.Reasons.Select(Text));
        Assert.Equal(["by"], details.UnusedColumns.ToArray());
        Assert.Empty(details.Channels);
        Assert.Null(details.Clock);
        Assert.Null(details.StepSeconds);
    }

    /// <summary>Days of a made-up sky at 53° N 0° E, stamped in UTC by a clock that is ahead.</summary>
    private static string Sky(int aheadMin, int days, int stepMinutes = 10)
    {
        SyntheticSky sky = new(53, 0);
        var text = new StringBuilder("time,temp,rh,sun\n");
        for (int i = 0; i < days * 1440 / stepMinutes; i++)
        {
            Instant at = Instant.FromUtc(2025, 5, 5, 0, 0) + Duration.FromMinutes(i * stepMinutes);
            text.Append(CultureInfo.InvariantCulture, $"{(at + Duration.FromMinutes(aheadMin)).ToDateTimeUtc():yyyy-MM-dd'T'HH:mm}Z,20,80,{sky.Wm2(at):0}\n");
        }

        return text.ToString();
    }

    private static string[] Sheets(TestNursery nursery) => [.. Directory.GetFiles(Path.Combine(nursery.Store, "imports"), "*.json").Order(StringComparer.Ordinal)];

    private static string Text(SetAsideReason reason) => $"{reason.Code} {reason.Kind} {reason.Count}: {string.Join(',', reason.Lines)}";

    /// <summary>Details with their lists as text, for comparison.</summary>
    private static string Flat(ImportDetails d)
        => $"{d.Dialect} {string.Join(' ', d.TimeFormats)} {string.Join(' ', d.UnusedColumns)} {d.UnusedColumnCount} {string.Join(' ', d.Reasons.Select(Text))} {d.StepSeconds} {d.StepShare} {d.Gaps?.Count} {d.Gaps?.MissingHours} {string.Join(' ', d.Gaps?.Longest ?? [])} {string.Join(' ', d.Channels)} {d.Clock?.Sentence}";
}
