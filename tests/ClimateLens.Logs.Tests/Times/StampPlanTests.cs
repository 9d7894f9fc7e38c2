namespace ClimateLens.Logs.Tests.Times;

/// <summary>What is told of files whose rows are looked at together: of each format and of each year, and nothing where there is nothing to tell.</summary>
public sealed class StampPlanTests
{
    private const string TwoFormats = """format = ["d/M/yyyy HH:mm", "M/d/yyyy HH:mm"]""";
    private const string NoYear = "format = \"dd/MM HH:mm\"\nyear = 2023";

    [Fact]
    public void TwoFormats_RowsOfEach_AreCounted()
    {
        using TestNursery nursery = Import(TwoFormats, "13/10/2025 10:00", "13/10/2025 10:05", "10/13/2025 10:10");
        Assert.Equal("2 rows d/M/yyyy HH:mm; 1 rows M/d/yyyy HH:mm", Found("import.timeFormats"));
        Assert.Equal(["d/M/yyyy HH:mm 2", "M/d/yyyy HH:mm 1"], Assert.Single(_report!.Sheets).Details!.TimeFormats.Select(f => $"{f.Format} {f.Rows}"));
        Assert.Equal(3, nursery.Rows().Length);
    }

    [Fact]
    public void TwoFormats_UndecidedRows_AreCountedApart()
    {
        // 3 April or 4 March, a day alone.
        using TestNursery nursery = Import(TwoFormats, "3/4/2025 10:00", "3/4/2025 10:05", "x");
        Assert.Equal("0 rows d/M/yyyy HH:mm; 0 rows M/d/yyyy HH:mm; 2 rows undecided", Found("import.timeFormats"));
        Assert.Equal("rows before and behind it that leave one meaning", TestNursery.Single(_report!, "import.timeOrder").Expected);
        Assert.Equal("a time like d/M/yyyy HH:mm, or a time like M/d/yyyy HH:mm", TestNursery.Single(_report!, "import.time").Expected);
        Assert.Empty(nursery.Rows());
    }

    [Fact]
    public void TwoFormats_FileOfAHeaderAlone_TellsNothingOfFormats()
    {
        using TestNursery nursery = Import(TwoFormats);
        Assert.DoesNotContain(_report!.Problems, p => p.Code == "import.timeFormats");
        Assert.Empty(nursery.Rows());
    }

    [Fact]
    public void OneFormatWithoutAYear_TellsNothingOfFormatsNorOfOneYear()
    {
        using TestNursery nursery = Import(NoYear, "13/10 10:00", "13/10 10:05", "14/10 10:05");
        Assert.Empty(_report!.Problems);
        Assert.Equal(["2023-10-13T09:00:00Z", "2023-10-13T09:05:00Z", "2023-10-14T09:05:00Z"], Times(nursery));
    }

    [Fact]
    public void OneFormatWithoutAYear_RowsThatCannotBeRead_HaveNone()
    {
        using TestNursery nursery = Import(NoYear, "31/12 23:55", "x", "01/01 00:00", "01/01 00:05", "32/01 00:00");
        Assert.Equal("1 rows of 2023; 2 rows of 2024", Found("import.timeYears"));
        Assert.Equal(["2023-12-31T23:55:00Z", "2024-01-01T00:00:00Z", "2024-01-01T00:05:00Z"], Times(nursery));
        Assert.Equal([3, 6], nursery.SetAside().Select(a => a.Line));
    }

    [Fact]
    public void OneFormatWithoutAYear_LeapDayOfTheYearAfterTheFirst_IsRead()
    {
        // 2023 has no 29 February, 2024 has one.
        using TestNursery nursery = Import(NoYear, "31/12 12:00", "31/01 12:00", "28/02 12:00", "29/02 12:00", "01/03 12:00");
        Assert.Equal(["2023-12-31T12:00:00Z", "2024-01-31T12:00:00Z", "2024-02-28T12:00:00Z", "2024-02-29T12:00:00Z", "2024-03-01T12:00:00Z"], Times(nursery));
        Assert.Equal("1 rows of 2023; 4 rows of 2024", Found("import.timeYears"));
    }

    [Fact]
    public void TwoFormats_BlankLinesAndRowsOfTotalsBetween_KeepTheirPlaces()
    {
        // 10/12 and 12/10 are told by the rows beside them: 12 October.
        using TestNursery nursery = Import(TwoFormats, "11/10/2025 23:55", "", "12/10/2025 00:00", "total", "10/12/2025 00:05", "", "13/10/2025 00:10", "10/13/2025 00:15");
        Assert.Equal(["2025-10-11T22:55:00Z", "2025-10-11T23:00:00Z", "2025-10-11T23:05:00Z", "2025-10-12T23:10:00Z", "2025-10-12T23:15:00Z"], Times(nursery));
    }

    private ImportReport? _report;

    private string Found(string code) => TestNursery.Single(_report!, code).Found;

    private TestNursery Import(string time, params string[] rows)
    {
        var nursery = new TestNursery(TestNursery.Climate.Replace("format = \"iso\"", time, StringComparison.Ordinal));
        nursery.Write("a.csv", "time,temp,rh\n" + string.Concat(rows.Select((row, i) => row.Length == 0 ? "\n" : $"{row},{i},50\n")));
        _report = nursery.Import();
        return nursery;
    }

    private static IEnumerable<string> Times(TestNursery nursery) => nursery.Rows().Select(row => row.Split(' ')[0]);
}
