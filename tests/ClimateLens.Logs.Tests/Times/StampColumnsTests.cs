using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>Whole imports: dates alone, times over several columns, ends of intervals, and what is said of them. Europe/London, summer time (+01:00) unless told.</summary>
public sealed class StampColumnsTests
{
    /// <summary>Spreadsheets write midnight as the date alone; where the file writes midnight in full, a date alone lost its time.</summary>
    [Theory]
    [InlineData("iso", "2025-10-12T23:30", "2025-10-13", "2025-10-13T00:30")]
    [InlineData("iso", "20251012T2330", "20251013", "20251013T0030")]
    [InlineData("iso", "2025-285 23:30", "2025-286", "2025-286 00:30")]
    public void DateAlone_WhereMidnightIsNotWritten_IsMidnight(string format, string before, string bare, string after)
    {
        using TestNursery nursery = Import($"format = \"{format}\"", $"time,temp,rh\n{before},1,1\n{bare},2,2\n{after},3,3\n", out ImportReport report);
        Assert.Empty(report.Problems);
        Assert.Equal(["2025-10-12T22:30:00Z", "2025-10-12T23:00:00Z", "2025-10-12T23:30:00Z"], Times(nursery));
    }

    [Theory]
    [InlineData("\"iso\"", "2025-10-13T00:00", "2025-10-14", "2025-10-14T00:05")]
    [InlineData("\"iso\"", "2025-10-13 00", "2025-10-14", "2025-10-14 00:05")]
    [InlineData("\"iso\"", "20251013T0000", "20251014", "20251014T0005")]
    [InlineData("\"iso\"", "2025-286T00:00", "2025-287", "2025-287T00:05")]
    [InlineData("[\"dd/MM/yyyy HH:mm\", \"dd/MM/yyyy\"]", "13/10/2025 00:00", "14/10/2025", "14/10/2025 00:05")]
    [InlineData("[\"yyyyMMddHHmm\", \"yyyyMMdd\"]", "202510130000", "20251014", "202510140005")]
    public void DateAlone_WhereMidnightIsWritten_IsSetAside(string format, string midnight, string bare, string after)
    {
        using TestNursery nursery = Import($"format = {format}", $"time,temp,rh\n{midnight},1,1\n{bare},2,2\n{after},3,3\n", out _);
        Assert.Equal(["2025-10-12T23:00:00Z", "2025-10-13T23:05:00Z"], Times(nursery));
        Assert.Equal((3, 1, "import.time"), (nursery.SetAside().Single().Line, nursery.SetAside()[0].Column, nursery.SetAside()[0].Code));
    }

    [Fact]
    public void Midnights_AllWrittenInFull_Stand()
    {
        using TestNursery nursery = Import("format = \"yyyyMMddHHmm\"", "time,temp,rh\n202510130000,1,1\n202510140000,2,2\n", out ImportReport report);
        Assert.Empty(report.Problems);
        Assert.Equal(["2025-10-12T23:00:00Z", "2025-10-13T23:00:00Z"], Times(nursery));
    }

    /// <summary>The longest cells that may hold a part of a time, 64 bytes, and one more.</summary>
    [Theory]
    [InlineData(64, 64, true)]
    [InlineData(65, 64, false)]
    [InlineData(64, 65, false)]
    public void TwoColumns_LongCells_AreReadUpToALimit(int date, int clock, bool read)
    {
        string day = "13" + new string(' ', date - 14) + "oktober 2025";
        string time = "2:05" + new string(' ', clock - 6) + "PM";
        using TestNursery nursery = Import("field = [\"date\", \"clock\"]\nformat = \"d MMMM yyyy h:mm a\"", $"date,clock,temp,rh\n13 oktober 2025,2:00 PM,1,1\n{day},{time},2,2\n", out _);
        Assert.Equal(read ? ["2025-10-13T13:00:00Z", "2025-10-13T13:05:00Z"] : ["2025-10-13T13:00:00Z"], Times(nursery));
        Assert.Equal(read ? 0 : 1, nursery.SetAside().Length);
    }

    [Fact]
    public void TwoColumns_OverlongSecond_IsNotReadByTheFirstAlone()
    {
        using TestNursery nursery = Import("position = [1, 2]\nformat = \"excel1900\"", $"Date,Clock,temp,rh\n45943,0.5,1,1\n45943,{new string('7', 65)},2,2\n45943,,3,3\n", out _);
        Assert.Equal((3, "import.time"), (nursery.SetAside()[0].Line, nursery.SetAside()[0].Code));
        Assert.Equal("2025-10-13T11:00:00Z", Times(nursery)[^1]);
    }

    [Fact]
    public void TwoColumns_TimeThatIsNone_IsShownWhole()
    {
        using TestNursery nursery = Import("field = [\"date\", \"clock\"]\nformat = \"dd-MM-yyyy HH:mm\"", "date,clock,temp,rh\n13-10-2025,24:61,1,1\n", out ImportReport report);
        Problem problem = TestNursery.Single(report, "import.time");
        Assert.Contains("13-10-2025 24:61", problem.Found, StringComparison.Ordinal);
        Assert.Equal("a time like dd-MM-yyyy HH:mm", problem.Expected);
    }

    [Fact]
    public void Intervals_EndBeforeStart_SaysWhatIsExpected()
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"iso\"", "from,to,temp,rh\n2025-10-13 10:05,2025-10-13 10:00,2,2\nx,2025-10-13 10:00,2,2\n", out ImportReport report);
        Problem end = TestNursery.Single(report, "import.timeEnd");
        Assert.Contains("2025-10-13 10:00", end.Found, StringComparison.Ordinal);
        Assert.DoesNotContain("10:05", end.Found, StringComparison.Ordinal);
        Assert.Equal("an end that is not before the start, an ISO 8601 time like 2025-10-13T14:05", end.Expected);
        Assert.Equal("an ISO 8601 time like 2025-10-13T14:05", TestNursery.Single(report, "import.time").Expected); // of a row behind one of the other kind
    }

    [Theory]
    [InlineData("2025-10-13 10:05", true)] // no length, as some logs write a point in time
    [InlineData("2025-10-13 10:04:59", false)]
    [InlineData("10:00", true)] // on the next day
    [InlineData("2025-10-13T09:05Z", true)]
    [InlineData("2025-10-13T09:04Z", false)]
    [InlineData("2025-10-13T10:06+02:00", false)] // 08:06 UTC
    [InlineData("", false)]
    [InlineData("x", false)]
    public void Intervals_End_IsNotBeforeTheStart(string end, bool stands)
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"iso\"", $"from,to,temp,rh\n2025-10-13 10:05,{end},2,2\n", out _);
        Assert.Equal(stands ? [] : ["import.timeEnd"], nursery.SetAside().Select(a => a.Code));
        Assert.Equal(stands ? ["2025-10-13T09:05:00Z"] : [], Times(nursery));
    }

    [Fact]
    public void Intervals_EmptyEndOfSerialDays_IsSetAside()
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"excel1900\"", "from,to,temp,rh\n45943.5,45943.75,1,1\n45943.75,,2,2\n", out _);
        Assert.Equal(["2025-10-13T11:00:00Z"], Times(nursery));
        Assert.Equal((3, "import.timeEnd"), (nursery.SetAside().Single().Line, nursery.SetAside()[0].Code));
    }

    [Fact]
    public void Intervals_FileWithoutTheEnd_IsNotTaken()
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"iso\"", "from,temp,rh\n2025-10-13 10:05,2,2\n", out ImportReport report);
        Assert.Equal("import.timeColumn", Assert.Single(report.Problems, p => p.Severity == Severity.Error).Code);
        Assert.Empty(Times(nursery));
    }

    [Fact]
    public void Intervals_ColumnOfTheEnd_IsUsed()
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"iso\"", "from,to,temp,rh,note\n2025-10-13 10:05,2025-10-13 10:10,2,2,x\n", out ImportReport report);
        Assert.Equal(["note"], Assert.Single(report.Sheets).Details!.UnusedColumns.ToArray());
        Assert.Single(Times(nursery));
    }

    /// <summary>In a workbook a date cell is read as a date, and a text by the format, however short it is.</summary>
    [Theory]
    [InlineData("13/10/2025 14:05", "2025-10-13T13:05:00Z")]
    [InlineData("2025-10-13", "2025-10-12T23:00:00Z")]
    [InlineData("2025-10-13T14:05", "2025-10-13T13:05:00Z")]
    [InlineData("2025-10-1", null)]
    [InlineData("x", null)]
    [InlineData("", null)]
    [InlineData("2025-10/13 14:05", null)]
    [InlineData("2025/10-13 14:05", null)]
    public void Workbook_TextsBesideDateCells_AreReadByTheFormat(string text, string? utc)
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("*.csv", "*.xlsx", StringComparison.Ordinal).Replace("\"iso\"", "\"dd/MM/yyyy HH:mm\"", StringComparison.Ordinal));
        nursery.Write("a.xlsx", MadeWorkbook.Of(("Data", false, [["time", "temp", "rh"], [text, 1.0, 1.0], [new DateTime(2025, 10, 13, 15, 0, 0), 2.0, 2.0]])));
        nursery.Import();
        Assert.Equal(utc is null ? ["2025-10-13T14:00:00Z"] : [utc, "2025-10-13T14:00:00Z"], Times(nursery));
        Assert.Equal(utc is null ? 1 : 0, nursery.SetAside().Length);
    }

    private static TestNursery Import(string time, string text, out ImportReport report)
    {
        bool named = time.Contains("field", StringComparison.Ordinal) || time.Contains("position", StringComparison.Ordinal);
        var nursery = new TestNursery(TestNursery.Climate.Replace(named ? "field = \"time\"\n  format = \"iso\"" : "format = \"iso\"", time, StringComparison.Ordinal));
        nursery.Write("a.csv", text);
        report = nursery.Import();
        return nursery;
    }

    private static string[] Times(TestNursery nursery) => [.. nursery.Rows().Select(row => row.Split(' ')[0])];
}
