using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Tests;

public sealed class ImportTests
{
    [Fact]
    public void Import_PlainFile_StoresSiReadingsInUtc()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,-999,81.5\n");

        ImportReport report = nursery.Import();

        Assert.Empty(report.Problems);
        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((2, 2, 0, 0, 0), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Duplicates, sheet.Blank));
        Assert.Equal(["2025-07-01T09:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-07-01T09:05:00Z relativeHumidity=81.5"], nursery.Rows());
        Assert.Equal(300, nursery.Load().Batches[0].StepSeconds);
    }

    [Fact]
    public void Import_FahrenheitAndFraction_AreConverted()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("\"Cel\"", "\"[degF]\"", StringComparison.Ordinal).Replace("\"%\"", "\"1\"", StringComparison.Ordinal));
        nursery.Write("a.csv", "time,temp,rh\n2025-01-01T00:00Z,212,0.5\n");

        nursery.Import();

        // 212 °F is the boiling point, 100 °C, by the definition of the scales.
        var columns = nursery.Load().Batches[0].Columns;
        Assert.Equal(100, columns["airTemperature"][0], 10);
        Assert.Equal(50, columns["relativeHumidity"][0], 10);
    }

    [Fact]
    public void Import_Twice_ChangesNoByteAndCountsKnown()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\nbroken,1,2\n");
        nursery.Import();
        var before = nursery.StoreFiles();

        ImportReport again = nursery.Import();

        Assert.Equal(before, nursery.StoreFiles());
        Assert.Equal((0, 1), (again.FilesRead, again.FilesKnown));
        Assert.Empty(again.Sheets);
    }

    [Fact]
    public void Import_SameBytesUnderAnotherName_ChangesNothing()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");
        nursery.Import();
        var before = nursery.StoreFiles();
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");

        ImportReport report = nursery.Import();

        Assert.Equal(before, nursery.StoreFiles());
        Assert.Equal("b.csv", TestNursery.Single(report, "import.sameFile").File);
        Assert.Equal(2, report.FilesKnown);
    }

    [Fact]
    public void Import_GrownFile_CountsOldRowsAsDuplicates()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");
        nursery.Import();
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,20.6,81\n");

        ImportSheet sheet = Assert.Single(nursery.Import().Sheets);

        Assert.Equal((2, 1, 0, 1), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Duplicates));
        Assert.Equal(0, sheet.Conflicts);
        Assert.Equal(2, nursery.Rows().Length);
    }

    [Fact]
    public void Import_CorrectedFile_NewerWinsAndOlderIsKept()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,21,80\n");
        nursery.Import();
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,22,\n");

        ImportReport report = nursery.Import();

        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((1, 1, 1), (sheet.Accepted, sheet.Duplicates, sheet.Conflicts));
        Assert.Equal("2025-07-01T09:05:00Z airTemperature=22 relativeHumidity=80", nursery.Rows()[1]);
        var aside = Assert.Single(nursery.SetAside());
        Assert.Equal((3, "import.conflict", "2025-07-01T09:05:00Z; airTemperature=21; relativeHumidity=80"), (aside.Line, aside.Code, aside.Text));
        Assert.Equal(1, TestNursery.Single(report, "import.conflict").Count);
    }

    /// <summary>A wrong correction that is taken back: the bytes were seen before, but what stands in the store is the wrong one.</summary>
    [Fact]
    public void Import_FileThatIsAgainWhatItWas_WinsOverTheVersionBetween()
    {
        const string right = "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,21,80\n", wrong = "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,99,80\n2025-07-01T10:10,99,80\n";
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", right);
        nursery.Import();
        IReadOnlyList<string> rows = [.. nursery.Rows()];
        for (int again = 0; again < 2; again++)
        {
            nursery.Write("a.csv", wrong);
            nursery.Import();
            Assert.Contains(nursery.Rows(), row => row.Contains("airTemperature=99", StringComparison.Ordinal));
            nursery.Write("a.csv", right);

            Assert.Equal(1, nursery.Import().FilesRead);

            Assert.Equal(rows[1], nursery.Rows()[1]);
            Assert.Equal(0, nursery.Import().FilesRead);
        }
    }

    /// <summary>A copy of an older version under another name is the older one still: it does not win over what was read later.</summary>
    [Fact]
    public void Import_CopyOfAnOlderVersion_ChangesNothing()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");
        nursery.Import();
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,22,80\n");
        nursery.Import();
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");

        Assert.Equal(0, nursery.Import().FilesRead);

        Assert.Equal("2025-07-01T09:00:00Z airTemperature=22 relativeHumidity=80", Assert.Single(nursery.Rows()));
    }

    [Fact]
    public void Import_ChangedSettings_GivesTheStoreOfAFreshImport()
    {
        string file = "time,temp,rh\n2025-07-01T10:00,20.5,-1\n2025-07-01T10:05,-1,80\nx,1,1\n";
        string changed = TestNursery.Climate.Replace("[\"-999\"]", "[\"-1\"]", StringComparison.Ordinal);
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", file);
        nursery.Write("b.csv", "time,temp,rh\n2024-12-31T10:00,1,-1\n");
        nursery.Import();
        nursery.Set(changed);

        ImportReport report = nursery.Import();

        using var fresh = new TestNursery(changed);
        fresh.Write("a.csv", file);
        fresh.Write("b.csv", "time,temp,rh\n2024-12-31T10:00,1,-1\n");
        fresh.Import();
        Assert.Equal(2, report.FilesRead);
        Assert.Equal(fresh.StoreFiles(), nursery.StoreFiles());
        Assert.Equal(3, nursery.Rows().Length);
    }

    [Fact]
    public void Import_ChangedSettingsAndFileGone_KeepsItsRowsAndSaysSo()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        string gone = nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:05,21,-1\n");
        nursery.Import();
        File.Delete(gone);
        nursery.Set(TestNursery.Climate.Replace("[\"-999\"]", "[\"-1\"]", StringComparison.Ordinal));

        ImportReport report = nursery.Import();

        Assert.Equal(["2025-07-01T09:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-07-01T09:05:00Z airTemperature=21"], nursery.Rows());
        Assert.Contains("1 rows of \"a.csv\"", TestNursery.Single(report, "import.keptOld").Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_FileGoneWithSameSettings_KeepsItsRowsInSilence()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("*.csv", "*.csv\", \"*.txt", StringComparison.Ordinal));
        string gone = nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20.5,80\n");
        nursery.Write("b.txt", "time,temp,rh\n2025-07-01T10:05,21,80\n");
        nursery.Import();
        File.Delete(gone);
        nursery.Write("c.csv", "time,temp,rh\n2025-07-01T10:10,21,80\n");

        Assert.Empty(nursery.Import().Problems);

        Assert.Equal(3, nursery.Rows().Length);
    }

    [Fact]
    public void Import_RowsOfOneTimeInOneFile_LaterStandsAndEarlierIsSetAside()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n2025-07-01T10:00,21,80\n2025-07-01T10:00,21,\n");

        ImportSheet sheet = Assert.Single(nursery.Import().Sheets);

        Assert.Equal((3, 1, 1, 1, 1), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Duplicates, sheet.Conflicts));
        Assert.Equal(["2025-07-01T09:00:00Z airTemperature=21 relativeHumidity=80"], nursery.Rows());
        Assert.Equal((2, "import.repeated"), (nursery.SetAside()[0].Line, nursery.SetAside()[0].Code));
    }

    [Fact]
    public void Import_CellOfNoNumber_KeepsTheRow()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,\"1,5\",80\n2025-07-01T10:05,21:30,80\n2025-07-01T10:10,1e999,80\n2025-07-01T10:15,12abc,80\n");

        ImportReport report = nursery.Import();

        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((4, 4, 0, 4), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.CellsNotRead));
        Problem problem = TestNursery.Single(report, "import.number");
        Assert.Equal((3, 2, 3), (problem.Line, problem.Column, problem.Count));
        Assert.Contains("\"21:30\", also line 4, 5", problem.Found, StringComparison.Ordinal);
        Assert.Equal((2, 2, "import.decimal", "1,5"), nursery.SetAside()[0]);
        Assert.Equal("Where both marks occur, write decimalChar = \".,\" for the column; else correct decimalChar.", TestNursery.Single(report, "import.decimal").Mend);
        Assert.All(nursery.Rows(), row => Assert.EndsWith("Z relativeHumidity=80", row, StringComparison.Ordinal));
    }

    [Fact]
    public void Load_Slices_AreHalfOpenAndReachOverYears()
    {
        using var nursery = new TestNursery(TestNursery.Climate, "UTC");
        nursery.Write("a.csv", "time,temp,rh\n2024-12-31T23:00,1,1\n2024-12-31T23:30,2,1\n2025-01-01T00:00,3,1\n2025-01-01T00:30,4,1\n2025-01-01T01:00,5,1\n");
        nursery.Import();

        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        HouseInput input = store.Load(nursery.House, new NodaTime.Interval(NodaTime.Instant.FromUtc(2025, 1, 1, 0, 0), NodaTime.Instant.FromUtc(2025, 1, 1, 1, 0)), NodaTime.Duration.FromMinutes(30));

        Assert.Equal([2, 3, 4], input.Batches[0].Columns["airTemperature"]);
        Assert.Equal(NodaTime.Instant.FromUtc(2024, 12, 31, 23, 30), input.RunIn.Start);
        Assert.Equal(NodaTime.Instant.FromUtc(2024, 12, 31, 23, 0), store.Extent("1")!.Value.Start);
        Assert.Equal(NodaTime.Instant.FromUtc(2025, 1, 1, 1, 0), store.Extent("1")!.Value.End);
        Assert.Null(store.Extent("2"));
    }

    [Fact]
    public void Load_History_EndsWhereThePeriodStarts_AndIsAskedFor()
    {
        using var nursery = new TestNursery(TestNursery.Climate, "UTC");
        nursery.Write("a.csv", "time,temp,rh\n2024-12-31T22:30,0,1\n2024-12-31T23:00,1,1\n2024-12-31T23:30,2,1\n2025-01-01T00:00,3,1\n2025-01-01T00:30,4,1\n");
        nursery.Import();

        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        var period = new NodaTime.Interval(NodaTime.Instant.FromUtc(2025, 1, 1, 0, 0), NodaTime.Instant.FromUtc(2025, 1, 1, 1, 0));
        HouseInput input = store.Load(nursery.House, period, NodaTime.Duration.FromMinutes(30), NodaTime.Duration.FromMinutes(60));

        Assert.Equal([1, 2], input.History.Single().Columns["airTemperature"]);
        Assert.Equal([2, 3, 4], input.Batches.Single().Columns["airTemperature"]);
        Assert.Empty(store.Load(nursery.House, period, NodaTime.Duration.FromMinutes(30)).History);
    }

    [Fact]
    public void Version_OnlyChangesWithTheContent()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();
        string first = store.Version;
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        store.Import();
        Assert.Equal(first, store.Version);
        nursery.Write("c.csv", "time,temp,rh\n2025-07-01T10:05,20,80\n");
        store.Import();
        Assert.NotEqual(first, store.Version);
        Assert.Equal(2, store.Sheets.Length);
    }

    [Fact]
    public void Check_ReportsAsImportDoes_AndWritesNothing()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\nx,1,1\n2025-07-01T10:05,q,80\n");
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:00,21,80\n");

        ImportReport check = ExportChecker.Check(nursery.Settings, nursery.Folder);

        Assert.False(Directory.Exists(nursery.Store));
        ImportReport import = nursery.Import();
        Assert.Equal(import.Problems.ToArray(), check.Problems.ToArray());
        ImportSheet[] Bare(ImportReport report) => [.. report.Sheets.Select(s => s with { Details = null, SheetSha256 = "" })];
        Assert.Equal(Bare(import), Bare(check));
        Assert.All(check.Sheets, s => Assert.NotNull(s.Details));
        Assert.Equal(["import.time", "import.number", "import.conflict"], check.Problems.Select(p => p.Code));
    }
}
