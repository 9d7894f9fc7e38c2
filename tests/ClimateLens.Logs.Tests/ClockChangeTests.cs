using System.Text;

namespace ClimateLens.Logs.Tests;

/// <summary>
/// The clocks of Europe/London go back on 26 October 2025 from 02:00 to 01:00 local and forward on 30 March 2025 from
/// 01:00 to 02:00 (IANA time zone database: EU rule, last Sunday, 01:00 UTC).
/// </summary>
public sealed class ClockChangeTests
{
    [Fact]
    public void RepeatedHour_ForwardFile_IsToldByOrder()
        => Assert.Equal(["23:30", "00:00", "00:30", "01:00", "01:30", "02:00"], Times("00:30", "01:00", "01:30", "01:00", "01:30", "02:00"));

    [Fact]
    public void RepeatedHour_NewestFirstFile_IsToldByOrder()
        => Assert.Equal(["23:00", "23:30", "00:00", "00:30", "01:00", "01:30", "02:00"], Times("02:00", "01:30", "01:00", "01:30", "01:00", "00:30", "00:00"));

    [Fact]
    public void RepeatedHour_HourlyFile_IsToldByTheRepeat()
        => Assert.Equal(["23:00", "00:00", "01:00", "02:00"], Times("00:00", "01:00", "01:00", "02:00"));

    [Fact]
    public void RepeatedHour_FileEndsInTheFirstPass_JoinsWhatStandsBefore()
        => Assert.Equal(["22:30", "23:00", "23:30", "00:00", "00:30"], Times("23:30@25", "00:00", "00:30", "01:00", "01:30"));

    [Fact]
    public void RepeatedHour_FileStartsInTheSecondPass_JoinsWhatFollows()
        => Assert.Equal(["01:00", "01:30", "02:00", "02:30"], Times("01:00", "01:30", "02:00", "02:30"));

    [Fact]
    public void RepeatedHour_OnePassBetweenBoth_IsSetAside()
    {
        using var nursery = Import(out ImportReport report, "00:00", "00:30", "01:00", "01:30", "02:00", "02:30");
        Assert.Equal(4, nursery.Rows().Length);
        Assert.Equal([4, 5], nursery.SetAside().Select(a => a.Line));
        Assert.Equal("2025-10-26T01:00,1,1", nursery.SetAside()[0].Text);
        Assert.Equal(2, TestNursery.Single(report, "import.timeTwice").Count);
    }

    [Fact]
    public void RepeatedHour_ShuffledFile_IsSetAside()
    {
        using var nursery = Import(out ImportReport report, "03:00", "00:00", "01:30", "02:30", "01:00", "00:30");
        Assert.Equal(2, Assert.Single(report.Sheets).SetAside);
        Assert.Equal(4, nursery.Rows().Length);
    }

    [Fact]
    public void MissingHour_IsSetAsideWithTheReason()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-03-30T00:30,1,1\n2025-03-30T01:00,2,2\n2025-03-30T01:30,3,3\n2025-03-30T02:00,4,4\n");
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-03-30T00:30:00Z airTemperature=1 relativeHumidity=1", "2025-03-30T01:00:00Z airTemperature=4 relativeHumidity=4"], nursery.Rows());
        Assert.Equal((3, 1, 2), (TestNursery.Single(report, "import.timeSkipped").Line, TestNursery.Single(report, "import.timeSkipped").Column, TestNursery.Single(report, "import.timeSkipped").Count));
    }

    /// <summary>The clocks of America/Havana go forward and back at midnight (tz database, rule Cuba): a date alone stands for the first moment of its day.</summary>
    [Theory]
    [InlineData("2025-03-08", "2025-03-09", "2025-03-08T05:00:00Z", "2025-03-09T05:00:00Z")] // from 00:00 -05:00 to 01:00 -04:00
    [InlineData("2025-11-01", "2025-11-02", "2025-11-01T04:00:00Z", "2025-11-02T04:00:00Z")] // the first of two midnights
    public void DateAlone_WhereTheClockChangesAtMidnight_IsTheStartOfItsDay(string first, string second, string firstUtc, string secondUtc)
    {
        using var nursery = new TestNursery(TestNursery.Climate, "America/Havana");
        nursery.Write("a.csv", $"time,temp,rh\n{first},1,1\n{second},2,2\n");
        ImportReport report = nursery.Import();
        Assert.Equal(0, Assert.Single(report.Sheets).SetAside);
        Assert.Equal([$"{firstUtc} airTemperature=1 relativeHumidity=1", $"{secondUtc} airTemperature=2 relativeHumidity=2"], nursery.Rows());
    }

    [Theory]
    [InlineData("+01:00", 4, "2025-03-29T23:30:00Z")]
    [InlineData("UTC", 4, "2025-03-30T00:30:00Z")]
    public void FixedOffset_KnowsNoMissingHour(string zone, int rows, string first)
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("format = \"iso\"", $"format = \"iso\"\ntimeZone = \"{zone}\"", StringComparison.Ordinal));
        nursery.Write("a.csv", "time,temp,rh\n2025-03-30T00:30,1,1\n2025-03-30T01:00,2,2\n2025-03-30T01:30,3,3\n2025-03-30T02:00,4,4\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(rows, nursery.Rows().Length);
        Assert.StartsWith(first, nursery.Rows()[0], StringComparison.Ordinal);
    }

    [Fact]
    public void StampsWithOffsets_NeedNoOrder()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-10-26T01:30+00:00,2,2\n2025-10-26T01:30+01:00,1,1\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(["2025-10-26T00:30:00Z airTemperature=1 relativeHumidity=1", "2025-10-26T01:30:00Z airTemperature=2 relativeHumidity=2"], nursery.Rows());
    }

    /// <summary>UTC times of day, in ascending order, of rows with these local times on 26 October 2025 (or the day after '@').</summary>
    private static IEnumerable<string> Times(params string[] local)
    {
        using var nursery = Import(out ImportReport report, local);
        Assert.Empty(report.Problems);
        return [.. nursery.Rows().Select(row => row.Substring(11, 5))];
    }

    private static TestNursery Import(out ImportReport report, params string[] local)
    {
        var nursery = new TestNursery(TestNursery.Climate);
        var text = new StringBuilder("time,temp,rh\n");
        foreach (string time in local)
        {
            string[] parts = time.Split('@');
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"2025-10-{(parts.Length > 1 ? parts[1] : "26")}T{parts[0]},1,1\n");
        }

        nursery.Write("a.csv", text.ToString());
        report = nursery.Import();
        return nursery;
    }
}
