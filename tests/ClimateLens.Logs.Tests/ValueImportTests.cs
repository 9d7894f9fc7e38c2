using System.Globalization;
using System.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Tests;

/// <summary>What an import says and keeps of odd values.</summary>
public sealed class ValueImportTests
{
    private const string Start = "2025-10-14T";

    [Fact]
    public void Import_TextsForNoValue_AreCountedByText()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,NaN,80\n{Start}10:05,---,80\n{Start}10:10,NaN,#N/A\n{Start}10:15,Err7,80\n{Start}10:20,20,80\n");

        ImportReport report = nursery.Import();

        Problem[] notes = [.. report.Problems.Where(p => p.Code == "import.noValue")];
        Assert.Equal(["\"NaN\" 2 times in airTemperature", "\"---\" 1 times in airTemperature", "\"Err7\" 1 times in airTemperature", "\"#N/A\" 1 times in relativeHumidity"], notes.Select(p => p.Found));
        Assert.Equal([(2, 2, 2), (3, 2, 1), (5, 2, 1), (4, 3, 1)], notes.Select(p => (p.Line!.Value, p.Column!.Value, p.Count)));
        Assert.All(notes, p => Assert.Equal(Severity.Note, p.Severity));
        Assert.Equal((5, 0), (report.Sheets[0].Accepted, report.Sheets[0].CellsNotRead));
        Assert.Empty(nursery.SetAside());
    }

    /// <summary>Two dozen texts of a column are named, the further ones counted together; those of another column are counted by themselves.</summary>
    [Fact]
    public void Import_ManyTextsForNoValue_AreNamedUpToANumber()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n" + string.Concat(Enumerable.Range(10, 30).Select(i => $"{Start}10:{i},E{i},{(i < 12 ? "n/a" : "80")}\n")) + $"{Start}11:00,E10,80\n");

        ImportReport report = nursery.Import();

        string[] notes = [.. report.Problems.Where(p => p.Code == "import.noValue").Select(p => p.Found!)];
        Assert.Equal(
            ["other texts 6 times in airTemperature", "\"E10\" 2 times in airTemperature", .. Enumerable.Range(11, 23).Select(i => $"\"E{i}\" 1 times in airTemperature"), "\"n/a\" 2 times in relativeHumidity"],
            notes);
        Assert.Equal(0, report.Sheets[0].CellsNotRead);
    }

    [Fact]
    public void Import_SwitchThatIsNeitherOnNorOff_IsKeptAsideAsSuch()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("airTemperature", "valve", StringComparison.Ordinal).Replace("\"Cel\"", "\"1\"", StringComparison.Ordinal));
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,open,80\n{Start}10:05,half,80\n{Start}10:10,closed,eighty\n");

        ImportReport report = nursery.Import();

        Problem problem = TestNursery.Single(report, "import.switch");
        Assert.Equal((3, 2, "\"half\"", "0 or 1, on or off, true or false, yes or no"), (problem.Line, problem.Column, problem.Found, problem.Expected));
        Assert.Equal((4, 3), (TestNursery.Single(report, "import.number").Line, TestNursery.Single(report, "import.number").Column));
        Assert.Equal(2, report.Sheets[0].CellsNotRead);
    }

    [Fact]
    public void Import_NumberThatLooksLikeACode_IsKeptAndWarnedOf()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("missingValues = [\"-999\"]", "", StringComparison.Ordinal));
        string rows = string.Concat(Enumerable.Range(10, 40).Select(m => $"{Start}10:{m},{(m < 22 ? "-999.0" : "20.5")},80\n"));
        nursery.Write("a.csv", $"time,temp,rh\n{rows}{Start}11:00,71.3,80\n{Start}11:05,20,6999\n");

        ImportReport report = nursery.Import();

        Problem[] codes = [.. report.Problems.Where(p => p.Code == "import.missingCode")];
        Assert.Equal(["\"-999.0\" 12 times in airTemperature", "\"6999\" 1 times in relativeHumidity"], codes.Select(p => p.Found));
        Assert.Equal("If it is one, add missingValues = [\"-999.0\"] to the column and import again.", codes[0].Mend);
        Assert.Equal(Severity.Warning, codes[0].Severity);
        Assert.Equal(12, nursery.Load().Batches[0].Columns["airTemperature"].Count(v => v == -999));
        Assert.Equal(71.3, nursery.Load().Batches[0].Columns["airTemperature"][40]);
    }

    [Fact]
    public void Import_AfterNamingTheCode_TakesTheRowsUpAgain()
    {
        string without = TestNursery.Climate.Replace("missingValues = [\"-999\"]", "", StringComparison.Ordinal);
        using var nursery = new TestNursery(without);
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,-999,80\n{Start}10:05,20,80\n");
        nursery.Import();
        Assert.Contains("airTemperature=-999", nursery.Rows()[0], StringComparison.Ordinal);

        nursery.Set(without.Replace("unit = \"Cel\"", "unit = \"Cel\"\n    missingValues = [\"-999\"]", StringComparison.Ordinal));

        Assert.DoesNotContain(nursery.Import().Problems, p => p.Code == "import.missingCode");
        Assert.Equal(["2025-10-14T09:00:00Z relativeHumidity=80", "2025-10-14T09:05:00Z airTemperature=20 relativeHumidity=80"], nursery.Rows());
    }

    [Fact]
    public void Import_EitherMarkInOneColumn_IsRead()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("channel = \"airTemperature\"", "channel = \"airTemperature\"\n    decimalChar = \".,\"", StringComparison.Ordinal));
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,\"21,5\",80.5\n{Start}10:05,21.5,\"80,5\"\n");

        ImportReport report = nursery.Import();

        Assert.Equal(["2025-10-14T09:00:00Z airTemperature=21.5 relativeHumidity=80.5", "2025-10-14T09:05:00Z airTemperature=21.5"], nursery.Rows());
        Assert.Equal((3, 3), (TestNursery.Single(report, "import.decimal").Line, TestNursery.Single(report, "import.decimal").Column));
    }

    [Fact]
    public void Import_UnitsInCells_AreReadOrKeptAside()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,21.5 °C,85%\n{Start}10:05,70 °F,85 %\n");

        Problem problem = TestNursery.Single(nursery.Import(), "import.unit");

        Assert.Equal((3, 2, "\"70 °F\"", "a number in Cel"), (problem.Line, problem.Column, problem.Found, problem.Expected));
        Assert.Equal(["2025-10-14T09:00:00Z airTemperature=21.5 relativeHumidity=85", "2025-10-14T09:05:00Z relativeHumidity=85"], nursery.Rows());
        Assert.Equal((3, 2, "import.unit"), (nursery.SetAside()[0].Line, nursery.SetAside()[0].Column, nursery.SetAside()[0].Code));
    }

    [Fact]
    public void Import_UnitChanges_ConvertFromTheirTimeOnByTheClockOfTheFile()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("unit = \"Cel\"", "unit = \"Cel\"\n    unitChanges = [{ from = 2025-10-14T10:05:00, unit = \"[degF]\" }, { from = 2025-10-14T10:15:00, unit = \"K\" }]", StringComparison.Ordinal));
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,20,80\n{Start}10:04:59,20,80\n{Start}10:05,68,80\n{Start}10:10,50,80\n{Start}10:15,293.15,80\n");

        nursery.Import();

        Assert.Equal(["20", "20", "20", "10", "20"], nursery.Load().Batches[0].Columns["airTemperature"].Select(v => v.ToString("0.########", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Import_UnitChangeAddedLater_TakesTheFilesUpAgain()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", $"time,temp,rh\n{Start}10:00,20,80\n{Start}10:05,50,80\n");
        nursery.Import();
        nursery.Set(TestNursery.Climate.Replace("unit = \"Cel\"", "unit = \"Cel\"\n    unitChanges = [{ from = 2025-10-14T10:05:00, unit = \"[degF]\" }]", StringComparison.Ordinal));
        Assert.Equal(1, nursery.Import().FilesRead);
        Assert.Equal(10, nursery.Load().Batches[0].Columns["airTemperature"][1], 9);
    }

    [Fact]
    public void Import_CountersOfFilesInAnyOrder_AreKeptAsLogged()
    {
        string toml = TestNursery.Climate.Replace("airTemperature", "rain", StringComparison.Ordinal).Replace("\"Cel\"", "\"mm\"\n    counter = true", StringComparison.Ordinal);
        string one = $"time,temp,rh\n{Start}10:00,998.2,80\n{Start}10:05,999.0,80\n", two = $"time,temp,rh\n{Start}10:10,0.4,80\n{Start}10:15,1.2,80\n";
        foreach ((string first, string second) in (ReadOnlySpan<(string, string)>)[(one, two), (two, one)])
        {
            using var nursery = new TestNursery(toml);
            nursery.Write("a.csv", first);
            nursery.Write("b.csv", second);
            Assert.DoesNotContain(nursery.Import().Problems, p => p.Severity > Severity.Note);
            Assert.Equal([998.2, 999.0, 0.4, 1.2], nursery.Load().Batches[0].Columns["rain"]);
        }
    }

    [Fact]
    public void Import_RecordsWithUnitsAndWords_AreRead()
    {
        using var nursery = new TestNursery("""
            [[export]]
            name = "log"
            house = "1"
            kind = "waterings"
            files = ["w.csv"]
              [export.time]
              field = "time"
              format = "iso"
              [[export.column]]
              field = "l"
              channel = "litres"
              unit = "m3"
              decimalChar = ".,"
              [[export.column]]
              field = "min"
              channel = "minutes"
            """);
        nursery.Write("w.csv", Encoding.UTF8.GetBytes($"time,l,min\n{Start}10:00,\"1,5 m³\",30 min\n{Start}11:00,n/a,30\n{Start}12:00,200 L,1 h\n"));

        ImportReport report = nursery.Import();

        Assert.Equal("1500", nursery.Load().Records[0].Fields["litres"]);
        Assert.Equal("30", nursery.Load().Records[0].Fields["minutes"]);
        Assert.Equal("\"n/a\" 1 times in litres", TestNursery.Single(report, "import.noValue").Found);
        Assert.Equal([(4, 2), (4, 3)], report.Problems.Where(p => p.Code == "import.unit").Select(p => (p.Line!.Value, p.Column!.Value)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    public void Import_UnitThatChanges_IsToldWithItsMendAndGoneOnceMended(int files)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        for (int file = 0; file < files; file++)
        {
            int perFile = 10 / files;
            nursery.Write($"{file:00}.csv", "time,temp,rh\n" + Days(file * perFile, perFile, day => day >= 5));
        }

        ImportReport report = nursery.Import();

        Problem problem = TestNursery.Single(report, "import.unitChange");
        Assert.Equal("airTemperature from 2025-10-06T00:00:00, as if it were in [degF] there", problem.Found);
        Assert.Equal("If the unit did change, write unitChanges = [{ from = 2025-10-06T00:00:00, unit = \"[degF]\" }] for the column and import again.", problem.Mend);
        Assert.InRange(nursery.Load().Batches[0].Columns["airTemperature"][^1], 60, 75);

        nursery.Set(TestNursery.Climate.Replace("unit = \"Cel\"", "unit = \"Cel\"\n    unitChanges = [{ from = 2025-10-06T00:00:00, unit = \"[degF]\" }]", StringComparison.Ordinal));
        Assert.DoesNotContain(nursery.Import().Problems, p => p.Code == "import.unitChange");
        Assert.All(nursery.Load().Batches[0].Columns["airTemperature"], v => Assert.InRange(v, 15, 22));
    }

    [Fact]
    public void Import_UnitOfOneDay_IsNotToldAsAChange()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n" + Days(0, 10, day => day == 5));
        Assert.DoesNotContain(nursery.Import().Problems, p => p.Code == "import.unitChange");
    }

    /// <summary>Days of ten-minute readings from 1 October 2025, local time, some of them in °F.</summary>
    private static string Days(int first, int count, Func<int, bool> fahrenheit)
    {
        var text = new StringBuilder();
        for (int i = first * 144; i < (first + count) * 144; i++)
        {
            double celsius = 18 + (2 * Math.Sin(i * 2 * Math.PI / 144));
            double value = fahrenheit(i / 144) ? (celsius * 1.8) + 32 : celsius;
            text.Append(CultureInfo.InvariantCulture, $"2025-10-{1 + (i / 144):00}T{i % 144 / 6:00}:{i % 6 * 10:00},{value:0.00},{80 - celsius:0.0}\n");
        }

        return text.ToString();
    }
}
