using System.Diagnostics;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Tests;

public sealed class ShapeTests
{
    [Fact]
    public void FixedWidth_CountsCharacters_AndReadsShortLines()
    {
        using var nursery = new TestNursery(Columns("widths = [16, 7, 6]", ("Wärme", "airTemperature", "Cel"), ("rF", "relativeHumidity", "%")));
        nursery.Write("x.dat", "time             Wärme    rF\n2025-01-01T10:00   20.5    80\n2025-01-01T10:05   20.6\n2025-01-01T10:10   20.7    81 x\n".Replace("time             Wärme    rF", "time              Wärme    rF", StringComparison.Ordinal));
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-01-01T10:05:00Z airTemperature=20.6"], nursery.Rows());
        Problem tooMuch = Assert.Single(report.Problems);
        Assert.Equal(("import.fields", 4), (tooMuch.Code, tooMuch.Line));
    }

    [Fact]
    public void Blanks_AnyNumber_StandBetweenFields()
    {
        using var nursery = new TestNursery(Columns("delimiter = \" \"", ("temp", "airTemperature", "Cel"), ("rh", "relativeHumidity", "%")));
        nursery.Write("x.dat", "  time   temp rh\n2025-01-01T10:00\t 20.5    80 \n \"2025-01-01T10:05\" 20.6 81\n\n2025-01-01T10:10 20.7\n");
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-01-01T10:05:00Z airTemperature=20.6 relativeHumidity=81"], nursery.Rows());
        Assert.Equal(("import.fields", 5), (Assert.Single(report.Problems).Code, report.Problems[0].Line));
        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((4, 2, 1, 1), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Blank));
    }

    [Fact]
    public void HeaderRows_NamesAndUnits_AreJoined_AndSetAsideWhereTheyComeAgain()
    {
        using var nursery = new TestNursery(Columns("headerRows = [2, 3]", ("Temp degC", "airTemperature", "Cel"), ("RH %", "relativeHumidity", "%")));
        nursery.Write("x.csv", "House 1,,\ntime,Temp,RH\n,degC,%\n2025-01-01T10:00,20.5,80\ntime,Temp,RH\n,degC,%\n2025-01-01T10:05,20.6,81\n");
        ImportReport report = nursery.Import();
        Assert.Equal(2, nursery.Rows().Length);
        Assert.Equal(("import.headerAgain", 2), (Assert.Single(report.Problems).Code, report.Problems[0].Count));
    }

    [Fact]
    public void LongTable_FeedsEachColumnFromItsRows()
    {
        using var nursery = new TestNursery("""
            [[export]]
            name = "climate"
            house = "1"
            files = ["x.*"]
              [export.time]
              field = "time"
              format = "iso"
              [[export.column]]
              field = "value"
              channel = "airTemperature"
              unit = "Cel"
              where = { sensor = "T1", variable = "temp" }
              [[export.column]]
              field = "value"
              channel = "relativeHumidity"
              unit = "%"
              where = { sensor = "T1", variable = "rh" }
              [[export.column]]
              field = "value"
              channel = "airTemperature"
              sensor = "other"
              unit = "[degF]"
              where = { variable = "temp", sensor = "T2" }
            """);
        nursery.Write("x.csv", "time,sensor,variable,value\n2025-01-01T10:00,T1,temp,20.5\n2025-01-01T10:00,T1,rh,80\n2025-01-01T10:00, T2 ,temp,68\n2025-01-01T10:00,T3,temp,1\n2025-01-01T10:05,T1,rh,81\n2025-01-01T10:05,T1,rh,81\n");
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-01-01T10:00:00Z airTemperature=20.5 airTemperature@other=20 relativeHumidity=80", "2025-01-01T10:05:00Z relativeHumidity=81"], nursery.Rows().Select(Rounded));
        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((5, 4, 0, 1), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Duplicates));
        Problem others = Assert.Single(report.Problems);
        Assert.Equal(("import.otherRows", Severity.Note), (others.Code, others.Severity));
        Assert.StartsWith("1 rows", others.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void LongTable_WithoutTheFieldOfACondition_IsToldOf()
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel")).Replace("unit = \"Cel\"", "unit = \"Cel\"\nwhere = { station = \"A\" }", StringComparison.Ordinal));
        nursery.Write("x.csv", "time,statoin,temp\n2025-01-01T10:00,A,20\n");
        Assert.Contains("the nearest is \"statoin\"", TestNursery.Single(nursery.Import(), "import.whereField").Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void NewHeaderInTheMiddle_ColumnsAreReadByTheirNewPlaces()
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel"), ("rh", "relativeHumidity", "%")));
        nursery.Write("x.csv", "time,temp,rh\n2025-01-01T10:00,20.5,80\ntime,CO2,rh,temp\n2025-01-01T10:05,410,81,20.6\n");
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", "2025-01-01T10:05:00Z airTemperature=20.6 relativeHumidity=81"], nursery.Rows());
        Assert.Equal(("import.headerChanged", 3), (Assert.Single(report.Problems).Code, report.Problems[0].Line));
    }

    [Theory]
    [InlineData("time,CO2,temp", "410,20.6")]
    [InlineData("CO2,time,temp", "20.6")]
    [InlineData("No,time,CO2,temp", "410,20.6")]
    public void NewHeaderWithTheTimeElsewhere_IsFollowedWhereAllRowsTogetherTellTheFormat(string header, string behind)
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel")).Replace("format = \"iso\"", "format = [\"d/M/yyyy HH:mm\", \"M/d/yyyy HH:mm\"]", StringComparison.Ordinal));
        string row = string.Concat(header[..header.IndexOf("time", StringComparison.Ordinal)].Where(c => c == ',').Select(_ => "1,"));
        nursery.Write("x.csv", $"time,temp,x\n14/1/2025 10:00,20.4,1\n14/1/2025 10:05,20.5,1\n{header}\n{row}14/1/2025 10:10,{behind}\n{row}1/14/2025 10:15,{behind}\n");
        ImportReport report = nursery.Import();
        Assert.Equal(["2025-01-14T10:00:00Z airTemperature=20.4", "2025-01-14T10:05:00Z airTemperature=20.5", "2025-01-14T10:10:00Z airTemperature=20.6", "2025-01-14T10:15:00Z airTemperature=20.6"], nursery.Rows());
        Assert.Equal(1, Assert.Single(report.Sheets).SetAside);
    }

    [Fact]
    public void HeaderOfAnotherTableBelow_WhatStandsThereIsSetAside()
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel"), ("rh", "relativeHumidity", "%")));
        nursery.Write("x.csv", "time,temp,rh\n2025-01-01T10:00,20.5,80\ntime,alarm,state\n2025-01-01T10:05,high,on\n2025-01-01T10:10,high,off\n");
        ImportReport report = nursery.Import();
        Assert.Equal("2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", Assert.Single(nursery.Rows()));
        Assert.Equal(3, Assert.Single(report.Problems, p => p.Code == "import.headerStrange").Count);
    }

    [Fact]
    public void NewHeaderOfTheSameWidth_IsSeenToo()
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel"), ("rh", "relativeHumidity", "%")));
        nursery.Write("x.csv", "time,temp,rh\n2025-01-01T10:00,20.5,80\ntime,rh,temp\n2025-01-01T10:05,81,20.6\ntime,temp,rh\n2025-01-01T10:10,20.7,82\n");
        nursery.Import();
        Assert.Equal("2025-01-01T10:05:00Z airTemperature=20.6 relativeHumidity=81", nursery.Rows()[1]);
        Assert.Equal("2025-01-01T10:10:00Z airTemperature=20.7 relativeHumidity=82", nursery.Rows()[2]);
    }

    [Fact]
    public void NewHeaderWithoutTheTime_WhatStandsBelowIsSetAside_UpToTheOldHeader()
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel"), ("rh", "relativeHumidity", "%")));
        nursery.Write("x.csv", "time,temp,rh\n2025-01-01T10:00,20.5,80\nstamp,rh,temp\n2025-01-01T10:05,81,20.6\n2025-01-01T10:10,82,20.7\ntime,temp,rh\n2025-01-01T10:15,20.8,83\n");
        ImportReport report = nursery.Import();
        Assert.Equal(2, nursery.Rows().Length);
        Assert.Equal(3, TestNursery.Single(report, "import.headerStrange").Count);
    }

    [Theory]
    [InlineData("Average,20.5,80")]
    [InlineData("Gemiddelde:,20.5,80")]
    [InlineData(",Summe,80")]
    [InlineData("Moyenne")]
    public void TotalsBelowTheRows_AreSetAsideAsThat(string row)
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel"), ("rh", "relativeHumidity", "%")));
        nursery.Write("x.csv", $"time,temp,rh\n2025-01-01T10:00,20.5,80\n{row}\n");
        Problem sum = Assert.Single(nursery.Import().Problems);
        Assert.Equal(("import.summaryRow", Severity.Note, 3), (sum.Code, sum.Severity, sum.Line));
    }

    [Fact]
    public void Folder_StandsForItsExports()
    {
        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel")).Replace("x.*", "logs", StringComparison.Ordinal));
        nursery.Write("logs/a.csv", "time,temp\n2025-01-01T10:00,20\n");
        nursery.Write("logs/b.TXT", "time,temp\n2025-01-01T10:05,20\n");
        nursery.Write("logs/photo.jpg", "x");
        Assert.Equal(2, nursery.Import().FilesRead);
    }

    [Fact]
    public async Task PipeDeviceAndLinkInACircle_AreNotWaitedFor()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // it has no such files
        }

        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel")).Replace("x.*", "**/x.*", StringComparison.Ordinal));
        await MakePipe(Path.Combine(nursery.Folder, "x.1.csv"));

        File.CreateSymbolicLink(Path.Combine(nursery.Folder, "x.2.csv"), "/dev/zero");
        File.CreateSymbolicLink(Path.Combine(nursery.Folder, "x.3.csv"), Path.Combine(nursery.Folder, "x.3.csv"));
        Directory.CreateSymbolicLink(Path.Combine(nursery.Folder, "round"), nursery.Folder);
        nursery.Write("x.4.csv", "time,temp\n2025-01-01T10:00,20\n");
        ImportReport report = await Task.Run(nursery.Import).WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Equal("x.4.csv", Assert.Single(report.Sheets).File);
        Assert.Equal(["x.1.csv", "x.2.csv", "x.3.csv"], report.Problems.Select(p => p.File).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task PipeNamedAsAnArchive_IsNotWaitedFor()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // it has no such files
        }

        using var nursery = new TestNursery(Columns("", ("temp", "airTemperature", "Cel")));
        await MakePipe(Path.Combine(nursery.Folder, "x.zip"));
        ImportReport report = await Task.Run(nursery.Import).WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Equal("import.empty", Assert.Single(report.Problems).Code);
    }

    [Fact]
    public void FiveThousandColumns_AreRead()
    {
        using var nursery = new TestNursery(Columns("", ("c4999", "airTemperature", "Cel")));
        string names = string.Join(',', Enumerable.Range(1, 4999).Select(i => $"c{i}"));
        string row = string.Join(',', Enumerable.Range(1, 4999));
        nursery.Write("x.csv", $"time,{names}\n" + string.Concat(Enumerable.Range(0, 50).Select(i => $"2025-01-01T10:{i:00},{row.Replace("4999", "21", StringComparison.Ordinal)}\nbad,{row}\n")));
        nursery.Import();
        Assert.Equal(50, nursery.Rows().Length);
        Assert.EndsWith("=21", nursery.Rows()[0], StringComparison.Ordinal);
    }

    private static async Task MakePipe(string path)
    {
        using Process make = Process.Start("mkfifo", path);
        await make.WaitForExitAsync();
    }

    private static string Rounded(string row) => row.Replace("20.000000000000004", "20", StringComparison.Ordinal).Replace("19.999999999999996", "20", StringComparison.Ordinal);

    private static string Columns(string more, params (string Field, string Channel, string Unit)[] columns) => $"""
        [[export]]
        name = "climate"
        house = "1"
        files = ["x.*"]
        {more}
          [export.time]
          field = "time"
          format = "iso"

        """ + string.Concat(columns.Select(c => $"  [[export.column]]\n  field = \"{c.Field}\"\n  channel = \"{c.Channel}\"\n  unit = \"{c.Unit}\"\n"));
}
