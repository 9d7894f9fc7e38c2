using System.Globalization;

namespace ClimateLens.Logs.Tests;

/// <summary>Rows that lost a piece and still have all their fields: known by the rows around them, and set aside whole.</summary>
public sealed class TornRowTests
{
    private const int Rows = 60;

    [Theory]
    [InlineData("20.0.39", "two numbers that ran into each other")]
    [InlineData("20.39", "two decimals where all have one")]
    [InlineData("20", "no decimal where all have one")]
    public void OddNumberAlone_TakesItsRow(string cell, string why)
    {
        using TestNursery nursery = Import(i => i == 40 ? $"{Stamp(i)},{cell},80.0" : Sound(i));
        Assert.True(nursery.SetAside() is [.., { Line: 42, Code: "import.torn" }], why);
        Assert.DoesNotContain(nursery.Rows(), r => r.StartsWith(Utc(40), StringComparison.Ordinal));
        Assert.Equal(Rows - 1, nursery.Rows().Length);
    }

    [Fact]
    public void NumbersThatGoOnInAnotherForm_Stand()
    {
        using TestNursery nursery = Import(i => i >= 40 ? $"{Stamp(i)},20.25,80.0" : Sound(i));
        Assert.Empty(nursery.SetAside());
        Assert.Equal(Rows, nursery.Rows().Length);
    }

    [Fact]
    public void NumbersWithoutLastZeros_Stand()
    {
        using TestNursery nursery = Import(i => string.Create(CultureInfo.InvariantCulture, $"{Stamp(i)},{15 + (i * 7 % 60 / 10.0)},80.0"));
        Assert.Empty(nursery.SetAside());
        Assert.Equal(Rows, nursery.Rows().Length);
    }

    [Fact]
    public void CodesForNoValue_MayHaveAnyForm()
    {
        using TestNursery nursery = Import(i => i == 40 ? $"{Stamp(i)},-999,80.0" : Sound(i));
        Assert.Empty(nursery.SetAside());
        Assert.Equal($"{Utc(40)} relativeHumidity=80", nursery.Rows()[40]);
    }

    [Fact]
    public void OddNumberInAColumnThatNobodyReads_TakesItsRowAsWell()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,ec,rh\n" + string.Concat(Enumerable.Range(0, Rows).Select(i => $"{Stamp(i)},18.{i % 10},{(i == 40 ? "2.2.3" : "2.0")},80.0\n")));
        nursery.Import();
        Assert.Equal((42, "import.torn"), nursery.SetAside().Select(a => (a.Line, a.Code)).Single());
    }

    [Theory]
    [InlineData("2025-07-03T03:20")]
    [InlineData("2025-06-02T03:20")]
    public void TimeThatLeapsAwayAndBack_IsSetAside(string stamp)
    {
        using TestNursery nursery = Import(i => i == 40 ? $"{stamp},18.0,80.0" : Sound(i));
        Assert.Equal((42, "import.timeLeap"), nursery.SetAside().Select(a => (a.Line, a.Code)).Single());
        Assert.Equal(Rows - 1, nursery.Rows().Length);
    }

    [Fact]
    public void TimeThatLosesItsFirstDigit_DoesNotOverruleTheRowOfThatTime()
    {
        // 12-7-2025 00:00 without its first digit is 2-7-2025 00:00, which stands in the file.
        using var nursery = new TestNursery(TestNursery.Climate.Replace("\"iso\"", "\"d-M-yyyy HH:mm\"", StringComparison.Ordinal), "Etc/UTC");
        string[] rows = [.. Enumerable.Range(0, 12 * 48).Select(i => string.Create(CultureInfo.InvariantCulture, $"{new DateTime(2025, 7, 1).AddMinutes(30 * i):d-M-yyyy HH:mm},{18 + (i % 7)}.0,80.0"))];
        int torn = 11 * 48;
        rows[torn] = "1\n" + rows[torn][1..].Replace(",18.0", ",19.0", StringComparison.Ordinal);
        nursery.Write("a.csv", $"time,temp,rh\n{string.Join('\n', rows)}\n");
        nursery.Import();
        Assert.Contains("2025-07-02T00:00:00Z airTemperature=24 relativeHumidity=80", nursery.Rows());
        Assert.Equal(["import.fields", "import.timeLeap"], nursery.SetAside().Select(a => a.Code).Order());
    }

    [Fact]
    public void RowsOutOfOrder_Stand()
    {
        using TestNursery nursery = Import(i => Sound(i switch { 20 => 21, 21 => 20, 40 => 42, 42 => 40, _ => i }));
        Assert.Empty(nursery.SetAside());
        Assert.Equal(Rows, nursery.Rows().Length);
    }

    [Fact]
    public void TimesOfTwoClocksByTurns_Stand()
    {
        using TestNursery nursery = Import(i => i % 2 == 0 ? Sound(i / 2) : $"{new DateTime(2020, 1, 1).AddMinutes(5 * i):yyyy-MM-dd'T'HH:mm},18.0,80.0");
        Assert.Empty(nursery.SetAside());
        Assert.Equal(Rows, nursery.Rows().Length);
    }

    [Fact]
    public void DateAlone_WhereMidnightWasSeenWithItsTime_IsATimeCutShort()
    {
        using TestNursery nursery = Import(i => i == 1 ? "2025-07-01,99.9,80.0" : Sound(i), "Etc/UTC");
        Assert.Equal((3, "import.time"), nursery.SetAside().Select(a => (a.Line, a.Code)).Single());
        Assert.Equal("2025-07-01T00:00:00Z airTemperature=18 relativeHumidity=80", nursery.Rows()[0]);
    }

    [Fact]
    public void DateAlone_AtEveryMidnight_IsMidnight()
    {
        using TestNursery nursery = Import(i => $"{new DateTime(2025, 7, 1).AddHours(i):yyyy-MM-dd' 'HH:mm},18.0,80.0".Replace(" 00:00", "", StringComparison.Ordinal), "Etc/UTC");
        Assert.Empty(nursery.SetAside());
        Assert.Equal(3, nursery.Rows().Count(r => r.Contains("T00:00:00Z", StringComparison.Ordinal)));
    }

    [Fact]
    public void MarkDoubledInARow_WhoseLastCellIsEmpty_ShiftsNoValue()
    {
        using TestNursery nursery = Import(i => i == 40 ? $"{Stamp(i)},,18.0," : Sound(i));
        Assert.Equal((42, "import.fields"), nursery.SetAside().Select(a => (a.Line, a.Code)).Single());
    }

    [Fact]
    public void RowWithoutTheMarkThatAllOthersEndWith_IsSetAside()
    {
        using TestNursery nursery = Import(i => i == 40 ? $"{Stamp(i)},18.0,8" : Sound(i) + ",");
        Assert.Equal((42, "import.fields"), nursery.SetAside().Select(a => (a.Line, a.Code)).Single());
    }

    [Fact]
    public void Nul_InAFileWhoseLinesEndInCr_TakesItsRowAndNoMore()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\r2025-07-01T10:00,1\0,80\r2025-07-01T10:05,20,80\r");
        nursery.Import();
        Assert.Equal((2, "import.bytes"), nursery.SetAside().Select(a => (a.Line, a.Code)).Single());
        Assert.Single(nursery.Rows());
    }

    private static TestNursery Import(Func<int, string> row, string zone = "Europe/London")
    {
        var nursery = new TestNursery(TestNursery.Climate, zone);
        nursery.Write("a.csv", "time,temp,rh\n" + string.Concat(Enumerable.Range(0, Rows).Select(i => row(i) + "\n")));
        nursery.Import();
        return nursery;
    }

    private static string Sound(int i) => $"{Stamp(i)},18.{i % 10},80.0";

    private static string Stamp(int i) => new DateTime(2025, 7, 1).AddMinutes(5 * i).ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);

    private static string Utc(int i) => new DateTime(2025, 7, 1).AddMinutes((5 * i) - 60).ToString("yyyy-MM-dd'T'HH:mm':00Z'", CultureInfo.InvariantCulture);
}
