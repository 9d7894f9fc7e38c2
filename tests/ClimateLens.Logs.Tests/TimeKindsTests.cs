using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Tests;

/// <summary>Whole imports of files whose times are written in other ways than one ISO column.</summary>
public sealed class TimeKindsTests
{
    [Fact]
    public void ListOfFormats_FileThatMixesThem_IsReadByTheOrderOfTime()
    {
        using TestNursery nursery = Import("""format = ["dd/MM/yyyy HH:mm", "MM/dd/yyyy HH:mm"]""",
            "time,temp,rh\n30/09/2025 23:30,1,1\n01/10/2025 00:00,2,2\n10/01/2025 00:30,3,3\n01/10/2025 01:00,4,4\n", out ImportReport report);
        Assert.Equal(["2025-09-30T22:30:00Z", "2025-09-30T23:00:00Z", "2025-09-30T23:30:00Z", "2025-10-01T00:00:00Z"], Times(nursery));
        Assert.Contains("3 rows dd/MM/yyyy HH:mm; 1 rows MM/dd/yyyy HH:mm", TestNursery.Single(report, "import.timeFormats").Found, StringComparison.Ordinal);
    }

    [Fact]
    public void ListOfFormats_RowsThatOrderCannotDecide_AreSetAsideWithTheReason()
    {
        using TestNursery nursery = Import("""format = ["d/M/yyyy HH:mm", "M/d/yyyy HH:mm"]""", "time,temp,rh\n3/4/2025 10:00,1,1\n3/4/2025 10:05,2,2\nx,3,3\n", out ImportReport report);
        Assert.Equal(["import.time", "import.timeOrder", "import.timeOrder"], nursery.SetAside().Select(a => a.Code).Order());
        Assert.Equal([2, 3, 4], nursery.SetAside().Select(a => a.Line));
        Assert.Equal(2, TestNursery.Single(report, "import.timeOrder").Count);
        Assert.Equal((3, 0, 3), (report.Sheets[0].RowsRead, report.Sheets[0].Accepted, report.Sheets[0].SetAside));
    }

    [Fact]
    public void ListOfFormats_WithADateAlone_ReadsWhatSpreadsheetsWriteAtMidnight()
    {
        using TestNursery nursery = Import("format = [\"dd/MM/yyyy HH:mm\", \"dd/MM/yyyy\"]\ntimeZone = \"UTC\"", "time,temp,rh\n13/10/2025 23:30,1,1\n14/10/2025,2,2\n14/10/2025 00:30,3,3\n", out _);
        Assert.Equal(["2025-10-13T23:30:00Z", "2025-10-14T00:00:00Z", "2025-10-14T00:30:00Z"], Times(nursery));
    }

    [Fact]
    public void ListOfFormats_WithoutAYear_RollsOnAsOneFormatDoes()
    {
        using TestNursery nursery = Import("format = [\"dd/MM HH:mm\", \"dd/MM\"]\nyear = 2024\ntimeZone = \"UTC\"", "time,temp,rh\n31/12 23:30,1,1\n01/01,2,2\n01/01 00:30,3,3\n01/01 01:00,4,4\n", out _);
        Assert.Equal(["2024-12-31T23:30:00Z", "2025-01-01T00:00:00Z", "2025-01-01T00:30:00Z", "2025-01-01T01:00:00Z"], Times(nursery));
    }

    [Fact]
    public void StampsWithoutAYear_ATornDateTurnsNoYear()
    {
        using TestNursery nursery = Import("format = \"d.M. HH:mm\"\nyear = 2024\ntimeZone = \"UTC\"", "time,temp,rh\n15.10. 14:00,1,1\n15.10. 14:05,2,2\n5.1. 14:10,3,3\n15.10. 14:15,4,4\n15.10. 14:20,5,5\n", out ImportReport report);
        Assert.Equal(["2024-10-15T14:00:00Z", "2024-10-15T14:05:00Z", "2024-10-15T14:15:00Z", "2024-10-15T14:20:00Z"], Times(nursery));
        Assert.Equal(4, TestNursery.Single(report, "import.timeLeap").Line);
    }

    [Fact]
    public void ThreeColumns_YearDayAndHours_AreJoined()
    {
        using TestNursery nursery = Import("""
            field = ["Year", "Day", "HHMM"]
            format = "yyyy D HHmm"
            timeZone = "UTC"
            """, "Year,Day,HHMM,temp,rh\n2024,60,2355,1,1\n2024,60,2400,2,2\n2024,61,5,3,3\n", out ImportReport report);
        Assert.Empty(report.Problems);
        Assert.Equal(["2024-02-29T23:55:00Z", "2024-03-01T00:00:00Z", "2024-03-01T00:05:00Z"], Times(nursery));
    }

    [Fact]
    public void TwoColumns_SerialDayAndTime_AreAdded()
    {
        using TestNursery nursery = Import("""
            position = [1, 2]
            format = "excel1900"
            timeZone = "UTC"
            """, "Date,Clock,temp,rh\n45943,0.583333333333333,1,1\n45943,0.586805555555556,2,2\n", out _);
        Assert.Equal(["2025-10-13T14:00:00Z", "2025-10-13T14:05:00Z"], Times(nursery));
    }

    [Fact]
    public void SerialDays_WithADecimalComma_AreRead()
    {
        using var nursery = new TestNursery(Toml("format = \"excel1900\"").Replace("missingValues", "delimiter = \";\"\ndecimalChar = \",\"\nmissingValues", StringComparison.Ordinal));
        nursery.Write("a.csv", "time;temp;rh\n45943,5868055556;1,5;50\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(["2025-10-13T13:05:00Z airTemperature=1.5 relativeHumidity=50"], nursery.Rows());
    }

    [Fact]
    public void Epochs_InAFile_AreInstants()
    {
        using TestNursery nursery = Import("format = \"unixMilliseconds\"", "time,temp,rh\n1761438600000,1,1\n1761442200000,2,2\n", out ImportReport report);
        Assert.Empty(report.Problems);
        Assert.Equal(["2025-10-26T00:30:00Z", "2025-10-26T01:30:00Z"], Times(nursery)); // 01:30 twice on the clock of Europe/London
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void NoYear_FileOverNewYear_MovesOn(bool newestFirst)
    {
        string[] rows = ["28/02 12:00", "30/12 23:00", "31/12 23:00", "01/01 00:00", "31/12 23:30", "01/01 00:30", "28/02 12:00"];
        rows = newestFirst ? [.. rows.Reverse()] : rows;
        using TestNursery nursery = Import("format = \"dd/MM HH:mm\"\nyear = 2024", "time,temp,rh\n" + string.Concat(rows.Select((r, i) => $"{r},{i},1\n")), out ImportReport report);
        Assert.Equal(
            ["2024-02-28T12:00:00Z", "2024-12-30T23:00:00Z", "2024-12-31T23:00:00Z", "2024-12-31T23:30:00Z", "2025-01-01T00:00:00Z", "2025-01-01T00:30:00Z", "2025-02-28T12:00:00Z"],
            Times(nursery));
        Assert.Equal("4 rows of 2024; 3 rows of 2025", TestNursery.Single(report, "import.timeYears").Found);
    }

    [Fact]
    public void NoYear_LeapDayOfAYearThatHasNone_IsSetAside()
    {
        using TestNursery nursery = Import("format = \"d MMM HH:mm\"\nyear = 2025", "time,temp,rh\n28 feb. 12:00,1,1\n29 feb. 12:00,2,2\n1 mars 12:00,3,3\n", out _);
        Assert.Equal(["2025-02-28T12:00:00Z", "2025-03-01T12:00:00Z"], Times(nursery));
        Assert.Equal((3, "import.time"), (Assert.Single(nursery.SetAside()).Line, nursery.SetAside()[0].Code));
    }

    [Fact]
    public void Intervals_EndBeforeStart_IsSetAside()
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"iso\"",
            "from,to,temp,rh\n2025-10-13 10:00,2025-10-13 10:05,1,1\n2025-10-13 10:05,2025-10-13 10:00,2,2\n2025-10-13 10:10,,3,3\n2025-10-13 23:55,00:00,4,4\n", out ImportReport report);
        Assert.Equal(["2025-10-13T09:00:00Z", "2025-10-13T22:55:00Z"], Times(nursery));
        Assert.Equal([(3, "import.timeEnd"), (4, "import.timeEnd")], nursery.SetAside().Select(a => (a.Line, a.Code)));
        Assert.Equal(Nursery.Time.StampSide.IntervalStart, nursery.Load().Batches[0].StampSide);
        Assert.Contains("10:00", TestNursery.Single(report, "import.timeEnd").Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Intervals_OverTheClockChanges_Stand()
    {
        // The clock of Europe/London went from 02:00 to 01:00 on 26 October 2025 and from 01:00 to 02:00 on 30 March 2025.
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"iso\"",
            "from,to,temp,rh\n2025-03-30 00:30,2025-03-30 01:00,1,1\n2025-10-26 00:30,2025-10-26 01:00,1,1\n2025-10-26 01:00,2025-10-26 01:30,2,2\n2025-10-26 01:30,2025-10-26 01:00,3,3\n2025-10-26 01:00,2025-10-26 01:30,4,4\n2025-10-26 01:30,2025-10-26 02:00,5,5\n2025-10-26 02:00,2025-10-26 02:30,6,6\n", out ImportReport report);
        Assert.Empty(report.Problems);
        Assert.Equal(7, nursery.Rows().Length);
    }

    [Fact]
    public void Intervals_OverNewYearWithoutAYear_Stand()
    {
        using TestNursery nursery = Import("field = \"from\"\nendField = \"to\"\nformat = \"dd/MM HH:mm\"\nyear = 2024",
            "from,to,temp,rh\n31/12 23:50,31/12 23:55,1,1\n31/12 23:55,01/01 00:00,2,2\n01/01 00:00,01/01 00:05,3,3\n", out _);
        Assert.Equal(["2024-12-31T23:50:00Z", "2024-12-31T23:55:00Z", "2025-01-01T00:00:00Z"], Times(nursery));
    }

    [Theory]
    [InlineData("format = [\"d/M/yyyy HH:mm\", \"yyyy-MM-dd HH:mm\"]", "26/10/2025 {0}")]
    [InlineData("format = \"dd/MM HH:mm\"\nyear = 2025", "26/10 {0}")]
    [InlineData("format = \"d MMMM yyyy HH:mm\"", "26 oktober 2025 {0}")]
    [InlineData("format = \"yyyy D HH:mm\"", "2025 299 {0}")]
    public void RepeatedHour_InEveryKind_IsToldByOrder(string time, string stamp)
    {
        string[] clock = ["00:30", "01:00", "01:30", "01:00", "01:30", "02:00"];
        string rows = string.Concat(clock.Select((c, i) => string.Format(CultureInfo.InvariantCulture, stamp, c) + $",{i},1\n"));
        using TestNursery nursery = Import(time, "time,temp,rh\n" + rows, out _);
        Assert.Equal(
            ["2025-10-25T23:30:00Z", "2025-10-26T00:00:00Z", "2025-10-26T00:30:00Z", "2025-10-26T01:00:00Z", "2025-10-26T01:30:00Z", "2025-10-26T02:00:00Z"],
            Times(nursery));
    }

    [Fact]
    public void MissingHour_OfSerialDays_IsSetAside()
    {
        using TestNursery nursery = Import("format = \"excel1900\"", "time,temp,rh\n45746.0208333333,1,1\n45746.0625,2,2\n45746.0833333333,3,3\n", out _);
        Assert.Equal(["2025-03-30T00:30:00Z", "2025-03-30T01:00:00Z"], Times(nursery)); // 00:30, 01:30 (never), 02:00
        Assert.Equal((3, "import.timeSkipped"), (nursery.SetAside()[0].Line, nursery.SetAside()[0].Code));
    }

    [Fact]
    public void FlooredStamps_InAFile_AreNotedAndLoadWithTheirStep()
    {
        int[] minutes = [0, 4, 9, 15, 20, 24, 30, 34, 39, 45, 50, 54];
        string rows = string.Concat(Enumerable.Range(0, 24).SelectMany(h => minutes.Select(m => string.Create(CultureInfo.InvariantCulture, $"2025-10-13T{h:00}:{m:00},{h},1\n"))));
        using TestNursery nursery = Import("format = \"iso\"", "time,temp,rh\n" + rows, out ImportReport report);
        Assert.Contains("a step of 5 min", TestNursery.Single(report, "import.timeStep").Found, StringComparison.Ordinal);
        Assert.Equal(300, nursery.Load().Batches[0].StepSeconds);
        Assert.Equal(288, nursery.Rows().Length);
    }

    [Fact]
    public void TimesOfARecord_InAListOfFormats_FollowItsOwn()
    {
        using var nursery = new TestNursery("""
            [[export]]
            name = "log"
            house = "1"
            kind = "waterings"
            files = ["*.csv"]
              [export.time]
              field = "start"
              format = ["dd/MM/yyyy HH:mm", "yyyy-MM-dd HH:mm"]
              [[export.column]]
              field = "end"
              channel = "end"
              [[export.column]]
              field = "how"
              channel = "method"
            """);
        nursery.Write("a.csv", "start,end,how\n13/10/2025 10:00,13/10/2025 10:20,drip\n2025-10-14 10:00,10:20,drip\n2025-10-15 10:00,15/10/2025 10:20,drip\n");
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-10-13T09:20:00Z", "2025-10-14T09:20:00Z", "-"], nursery.Load().Records.Select(r => r.Fields.GetValueOrDefault("end", "-")));
        Assert.Equal(4, TestNursery.Single(report, "import.timeCell").Line);
    }

    [Fact]
    public void ChangedFormats_ReadTheFileAgain()
    {
        using TestNursery nursery = Import("""format = ["d/M/yyyy HH:mm", "M/d/yyyy HH:mm"]""", "time,temp,rh\n3/4/2025 10:00,1,1\n", out _);
        Assert.Empty(nursery.Rows());
        nursery.Set(Toml("format = \"d/M/yyyy HH:mm\""));
        nursery.Import();
        Assert.Equal(["2025-04-03T09:00:00Z"], Times(nursery));
    }

    private static string Toml(string time) => TestNursery.Climate.Replace(
        time.Contains("field", StringComparison.Ordinal) || time.Contains("position", StringComparison.Ordinal) ? "field = \"time\"\n  format = \"iso\"" : "format = \"iso\"", time, StringComparison.Ordinal);

    private static TestNursery Import(string time, string text, out ImportReport report)
    {
        var nursery = new TestNursery(Toml(time));
        nursery.Write("a.csv", Encoding.UTF8.GetBytes(text));
        report = nursery.Import();
        return nursery;
    }

    private static IEnumerable<string> Times(TestNursery nursery) => nursery.Rows().Select(row => row.Split(' ')[0]);
}
