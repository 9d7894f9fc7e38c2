using System.IO.Compression;
using System.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Tests;

public sealed class PackedTests
{
    private const string Log = "time,temp,rh\n2025-01-01T10:00,20.5,80\n2025-01-01T10:05,20.6,81\n";
    private static readonly string[] Rows = ["2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-01-01T10:05:00Z airTemperature=20.6 relativeHumidity=81"];

    [Fact]
    public void Gzip_IsRead_AndKnownAgainUnpacked()
    {
        using var nursery = new TestNursery(Any("x*"));
        nursery.Write("x.csv.gz", Gzip(Log));
        ImportReport first = nursery.Import();
        Assert.Empty(first.Problems);
        Assert.Equal(Rows, nursery.Rows());

        nursery.Write("x.csv", Log);
        ImportReport second = nursery.Import();
        Assert.Equal((0, 2), (second.FilesRead, second.FilesKnown));
        Assert.Equal("import.sameFile", Assert.Single(second.Problems).Code);
    }

    [Fact]
    public void Gzip_OfTwoMembers_IsReadWhole()
    {
        using var nursery = new TestNursery(Any("x*"));
        int half = Log.IndexOf("2025-01-01T10:05", StringComparison.Ordinal);
        nursery.Write("x.csv.gz", [.. Gzip(Log[..half]), .. Gzip(Log[half..])]);
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(Rows, nursery.Rows());
    }

    [Theory]
    [InlineData(5)]
    [InlineData(12)]
    public void Gzip_CutShort_IsAProblem_AndNothingIsTaken(int bytes)
    {
        using var nursery = new TestNursery(Any("x*"));
        byte[] whole = Gzip(Log);
        nursery.Write("x.csv.gz", whole[..^bytes]);
        Assert.Contains("cut short", TestNursery.Single(nursery.Import(), "import.packed").Found, StringComparison.Ordinal);
        Assert.Empty(nursery.Rows());
    }

    [Fact]
    public void Gzip_ThatGrowsBeyondMeasure_IsStopped()
    {
        using var nursery = new TestNursery(Any("x*"));
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            byte[] zeros = new byte[1 << 20];
            Array.Fill(zeros, (byte)'0');
            for (int i = 0; i < 100; i++)
            {
                gzip.Write(zeros);
            }
        }

        nursery.Write("x.csv.gz", packed.ToArray());
        Assert.Contains("times as large", TestNursery.Single(nursery.Import(), "import.packed").Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Zip_TakesItsTextFiles_AndNamesTheRest()
    {
        using var nursery = new TestNursery(Any("*.zip"));
        nursery.Write("week.zip", Zip(("a/x.csv", Log), ("photo.jpg", "JFIF"), ("__MACOSX/._x.csv", "x"), ("notes.pdf", "x")));
        ImportReport report = nursery.Import();
        Assert.Equal("week.zip/a/x.csv", Assert.Single(report.Sheets).File);
        Problem left = Assert.Single(report.Problems);
        Assert.Equal(("import.entriesLeft", Severity.Note), (left.Code, left.Severity));
        Assert.Contains("photo.jpg", left.Found, StringComparison.Ordinal);
        Assert.Equal(Rows, nursery.Rows());

        ImportReport again = nursery.Import();
        Assert.Equal((0, 1), (again.FilesRead, again.FilesKnown));
    }

    [Fact]
    public void Zip_PackedAnewWithAFurtherDay_ReadsOnlyThat()
    {
        using var nursery = new TestNursery(Any("*.zip"));
        nursery.Write("all.zip", Zip(("1.csv", Log)));
        nursery.Import();
        nursery.Write("all.zip", Zip(("1.csv", Log), ("2.csv", "time,temp,rh\n2025-01-02T10:00,19,70\n")));
        ImportReport report = nursery.Import();
        Assert.Equal((1, 1), (report.FilesRead, report.FilesKnown));
        Assert.Equal(3, nursery.Rows().Length);
    }

    [Theory]
    [InlineData("../x.csv", "leads out")]
    [InlineData("/etc/x.csv", "leads out")]
    [InlineData("C:/x.csv", "leads out")]
    [InlineData("a\\..\\x.csv", "leads out")]
    public void Zip_EntryThatLeadsOut_IsNotTaken(string name, string found)
    {
        using var nursery = new TestNursery(Any("*.zip"));
        nursery.Write("bad.zip", Zip((name, Log), ("good.csv", Log)));
        ImportReport report = nursery.Import();
        Assert.Contains(found, TestNursery.Single(report, "import.entry").Found, StringComparison.Ordinal);
        Assert.Equal("bad.zip/good.csv", Assert.Single(report.Sheets).File);
        Assert.Equal(["bad.zip"], Directory.GetFiles(nursery.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void Zip_TwoEntriesOfOneName_AreNotTaken()
    {
        using var nursery = new TestNursery(Any("*.zip"));
        nursery.Write("twice.zip", Zip(("x.csv", Log), ("x.csv", "time,temp,rh\n2025-01-01T10:00,1,1\n")));
        ImportReport report = nursery.Import();
        Assert.Contains("2 entries", TestNursery.Single(report, "import.entry").Found, StringComparison.Ordinal);
        Assert.Empty(report.Sheets);
    }

    [Fact]
    public void Zip_WithinAZip_IsToldOf()
    {
        using var nursery = new TestNursery(Any("*.zip", "entries = [\"*\"]"));
        nursery.Write("outer.zip", Zip(("inner.zip", "PK"), ("x.csv.gz", "x")));
        ImportReport report = nursery.Import();
        Assert.Equal(2, report.Problems.Count(p => p.Code == "import.entry"));
    }

    [Fact]
    public void Zip_WithPatterns_TakesThoseEntries()
    {
        using var nursery = new TestNursery(Any("*.zip", "entries = [\"climate/*.asc\"]"));
        nursery.Write("x.zip", Zip(("climate/1.asc", Log), ("other/2.asc", Log)));
        Assert.Equal("x.zip/climate/1.asc", Assert.Single(nursery.Import().Sheets).File);
    }

    [Fact]
    public void Zip_Damaged_IsAProblem()
    {
        using var nursery = new TestNursery(Any("*.zip"));
        nursery.Write("x.zip", Zip(("x.csv", Log))[..60]);
        Assert.Single(nursery.Import().Problems, p => p.Severity == Severity.Error);
    }

    [Fact]
    public void Workbook_DatesNumbersAndErrors_AreRead_ByTheDialectOfTheExport()
    {
        using var nursery = new TestNursery(Any("*.xlsx", "headerRow = 2\ndelimiter = \";\"\ndecimalChar = \",\"", "dd-MM-yyyy HH:mm"));
        nursery.Write("x.xlsx", MadeWorkbook.Of(("Data", false,
        [
            ["House 1", null, null],
            ["time", "temp", "rh"],
            [new DateTime(2025, 1, 1, 10, 0, 0), 20.5, 80.0],
            [new DateTime(2025, 1, 1, 10, 5, 0), "20,6", 81.0],
            ["01-01-2025 10:10", "#N/A", 82.0],
            ["Average", 20.5, 81.0],
        ])));
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-01-01T10:05:00Z airTemperature=20.6 relativeHumidity=81", "2025-01-01T10:10:00Z relativeHumidity=82"], nursery.Rows());
        Problem sum = Assert.Single(report.Problems);
        Assert.Equal(("import.summaryRow", 6), (sum.Code, sum.Line));
        Assert.Equal(0, nursery.Import().FilesRead);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Workbook_DateAndTimeInTwoColumns_AreJoined(bool from1904)
    {
        using var nursery = new TestNursery("""
            [[export]]
            name = "climate"
            house = "1"
            files = ["*.xlsx"]
              [export.time]
              field = "Date"
              timeOfDayField = "Clock"
              format = "dd/MM/yyyy HH:mm"
              [[export.column]]
              field = "temp"
              channel = "airTemperature"
              unit = "Cel"
            """);
        (string, bool, object?[][]) sheet = ("Data", false, [["Date", "Clock", "temp"], [new DateTime(2025, 1, 1), new TimeSpan(0, 0, 0), 19.5], [new DateTime(2025, 1, 1), new TimeSpan(10, 5, 0), 20.5]]);
        nursery.Write("x.xlsx", from1904 ? MadeWorkbook.From1904(sheet) : MadeWorkbook.Of(sheet));
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(["2025-01-01T00:00:00Z airTemperature=19.5", "2025-01-01T10:05:00Z airTemperature=20.5"], nursery.Rows());
    }

    [Fact]
    public void Workbook_DateAndTimeAsNumbers_AreReadByTheFormat()
    {
        // 20250101 and 1500 are no ISO 8601 date and hour.
        using var nursery = new TestNursery("""
            [[export]]
            name = "climate"
            house = "1"
            files = ["*.xlsx"]
              [export.time]
              field = "Date"
              timeOfDayField = "Clock"
              format = "yyyyMMdd HHmm"
              [[export.column]]
              field = "temp"
              channel = "airTemperature"
              unit = "Cel"
            """);
        nursery.Write("x.xlsx", MadeWorkbook.Of(("Data", false, [["Date", "Clock", "temp"], [20250101.0, 15.0, 20.5], [20250101.0, 1500.0, 21.5]])));
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(["2025-01-01T00:15:00Z airTemperature=20.5", "2025-01-01T15:00:00Z airTemperature=21.5"], nursery.Rows());
    }

    [Fact]
    public void Workbook_OfSeveralSheets_AsksWhich_AndPassesOverHiddenAndEmptyOnes()
    {
        object?[][] rows = [["time", "temp", "rh"], [new DateTime(2025, 1, 1, 10, 0, 0), 20.5, 80.0]];
        using var nursery = new TestNursery(Any("*.xlsx"));
        nursery.Write("x.xlsx", MadeWorkbook.Of(("Empty", false, []), ("Secret", true, rows), ("House 1", false, rows)));
        Assert.Empty(nursery.Import().Problems);
        Assert.Single(nursery.Rows());

        using var two = new TestNursery(Any("*.xlsx"));
        two.Write("y.xlsx", MadeWorkbook.Of(("House 1", false, rows), ("House 2", false, rows)));
        Problem several = TestNursery.Single(two.Import(), "import.packed");
        Assert.Contains("\"House 1\", \"House 2\"", several.Found, StringComparison.Ordinal);
        Assert.Contains("sheet = \"House 1\"", several.Mend, StringComparison.Ordinal);

        two.Set(Any("y.xlsx", "sheet = \"house 2\""));
        Assert.Empty(two.Import().Problems);
        two.Set(Any("y.xlsx", "sheet = 3"));
        Assert.Contains("one of", TestNursery.Single(two.Import(), "import.packed").Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Workbook_ThatIsAWebPage_IsToldOf()
    {
        using var nursery = new TestNursery(Any("*.xls"));
        nursery.Write("x.xls", "<html><table><tr><td>time</td></tr></table></html>");
        Assert.Contains("web page", TestNursery.Single(nursery.Import(), "import.binary").Found, StringComparison.Ordinal);
    }

    private static string Any(string files, string more = "", string format = "iso") => $"""
        [[export]]
        name = "climate"
        house = "1"
        files = ["{files}"]
        {more}
          [export.time]
          field = "time"
          format = "{format}"
          [[export.column]]
          field = "temp"
          channel = "airTemperature"
          unit = "Cel"
          [[export.column]]
          field = "rh"
          channel = "relativeHumidity"
          unit = "%"
        """;

    private static byte[] Gzip(string text)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            gzip.Write(Encoding.UTF8.GetBytes(text));
        }

        return packed.ToArray();
    }

    private static byte[] Zip(params (string Name, string Text)[] entries)
    {
        using var packed = new MemoryStream();
        using (var zip = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, string text) in entries)
            {
                using Stream stream = zip.CreateEntry(name).Open();
                stream.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return packed.ToArray();
    }
}
