using ClimateLens.Nursery.Problems;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests;

/// <summary>Small invented files in the manner of real ones: Data/cell.csv, Data/newest-first.csv, Data/half-hourly.csv.</summary>
public sealed class FlavourTests
{
    [Fact]
    public void Cell_QuotedNumbersTwoTimeColumnsAndUnnamedColumns_AreRead()
    {
        using var nursery = Nursery("cell.csv", """
            [[export]]
            name = "cell"
            house = "1"
            files = ["cell.csv"]
            delimiter = ";"
              [export.time]
              field = "Date"
              timeOfDayField = "Time"
              format = "yyyy-MM-dd HH:mm:ss"
              [[export.column]]
              field = "Hus 7: Lufttemperatur"
              channel = "airTemperature"
              unit = "Cel"
              [[export.column]]
              field = "Hus 7: Luftfugtighed VPD"
              channel = "vapourPressureDeficit"
              unit = "hPa"
              [[export.column]]
              position = 7
              channel = "fan"
              unit = "1"
              [[export.column]]
              field = "Hus 7: Solindstråling"
              channel = "globalRadiation"
              unit = "W/m2"
            """);

        Assert.Empty(nursery.Import().Problems);

        string[] rows = nursery.Rows();
        Assert.Equal("2014-03-30T00:30:00Z airTemperature=18 fan=0 globalRadiation=2.5E-07 vapourPressureDeficit=0.6000000000000001", rows[0]);
        Assert.Equal("2014-03-30T01:00:00Z fan=1 globalRadiation=3.25 vapourPressureDeficit=0.75", rows[3]);
        Assert.Equal(7, rows.Length);
        Assert.Equal(600, nursery.Load().Batches[0].StepSeconds);
    }

    [Fact]
    public void NewestFirst_MissingCodesAndRepeatedHour_AreRead()
    {
        using var nursery = Nursery("newest-first.csv", """
            [[export]]
            name = "weather"
            files = ["newest-first.csv"]
            missingValues = ["-9999", "-"]
              [export.time]
              field = "local"
              format = "yyyyMMddHHmmss"
              [[export.column]]
              field = "air_temp"
              channel = "outsideTemperature"
              unit = "Cel"
              [[export.column]]
              field = "rel_hum"
              channel = "outsideHumidity"
              unit = "%"
            """);

        Assert.Empty(nursery.Import().Problems);

        string[] rows = nursery.Rows(1); // it serves every house
        Assert.Equal(8, rows.Length);
        Assert.Equal("2025-10-25T23:00:00Z outsideHumidity=67 outsideTemperature=8", rows[0]);
        Assert.Equal("2025-10-26T00:30:00Z outsideHumidity=64 outsideTemperature=9.5", rows[3]);
        Assert.Equal("2025-10-26T01:00:00Z outsideHumidity=63 outsideTemperature=8", rows[4]);
        Assert.Equal("2025-10-26T02:30:00Z outsideHumidity=60 outsideTemperature=9.5", rows[7]);
    }

    [Fact]
    public void HalfHourly_MonthFirst_DayThirteenIsNoMonth()
    {
        using var nursery = Nursery("half-hourly.csv", """
            [[export]]
            name = "weather"
            files = ["half-hourly.csv"]
              [export.time]
              field = "DateTime"
              format = "M/d/yyyy H:mm"
              timeZone = "+10:00"
              [[export.column]]
              field = "VPD"
              channel = "vapourPressureDeficit"
              unit = "kPa"
            """);

        Problem problem = TestNursery.Single(nursery.Import(), "import.time");

        Assert.Equal((4, 1, "\"13/1/2008 0:30\""), (problem.Line, problem.Column, problem.Found));
        Assert.Equal(["2007-12-31T14:00:00Z vapourPressureDeficit=0.126564345", "2007-12-31T14:30:00Z vapourPressureDeficit=0.114572294"], nursery.Rows());
    }

    private static TestNursery Nursery(string file, string exports)
    {
        var nursery = new TestNursery(exports, "Europe/Copenhagen");
        nursery.Write(file, File.ReadAllBytes(Repository.PathOf($"tests/ClimateLens.Logs.Tests/Data/{file}")));
        return nursery;
    }
}
