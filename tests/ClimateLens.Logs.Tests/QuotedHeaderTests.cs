using ClimateLens.Logs.Describe;

namespace ClimateLens.Logs.Tests;

/// <summary>Names in quotes that stand over several lines, as spreadsheets write them.</summary>
public sealed class QuotedHeaderTests
{
    private const string Header = "\"Time\",\"Temp\n(°C)\",\"Relative\nhumidity\n(%)\"\n";
    private const string Rows = "2025-07-01T10:00,20.5,80\n2025-07-01T10:05,20.6,81\n2025-07-01T10:10,20.7,82\n";

    [Fact]
    public void HeaderOverSeveralLines_IsFoundByItsNames()
    {
        using TestNursery nursery = Import(Header + Rows, out ImportReport report);
        Assert.Empty(report.Problems);
        Assert.Equal(3, nursery.Rows().Length);
        Assert.Equal("2025-07-01T09:00:00Z airTemperature=20.5 relativeHumidity=80", nursery.Rows()[0]);
    }

    [Theory]
    [InlineData("\"Time\",\"Temp (°C),\"Relative humidity (%)\"\n")]
    [InlineData("Time,Temp (°C),\"Relative humidity (%)\n")]
    public void HeaderWithAStrayQuote_TakesNoRow(string header)
    {
        using TestNursery nursery = Import(header + "2025-07-01T10:00,\"20.5\",80\n" + Rows, out ImportReport report);
        Assert.Equal(4, report.Sheets.IsEmpty ? 4 : report.Sheets[0].RowsRead);
    }

    [Fact]
    public void HeaderOverSeveralLines_IsDescribed_AndTheDraftReadsIt()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        string file = nursery.Write("a.csv", Header + string.Concat(Enumerable.Range(0, 30).Select(i => $"2025-07-01T10:{i:00},2{i % 10}.5,8{i % 7}\n")));
        DraftExport draft = Assert.Single(FileDescriber.Describe([file], new DescribeOptions("1")).Exports);
        Assert.Equal(["\"Temp (°C)\"", "\"Relative humidity (%)\""], draft.Columns.Select(c => c.Keys[0].Values[0]));
        Assert.Contains(draft.Notes, n => n.StartsWith("a trial reading took 30 of 30 rows", StringComparison.Ordinal));
    }

    private static TestNursery Import(string text, out ImportReport report)
    {
        var nursery = new TestNursery(TestNursery.Climate.Replace("\"temp\"", "\"Temp (°C)\"", StringComparison.Ordinal).Replace("\"rh\"", "\"Relative humidity (%)\"", StringComparison.Ordinal).Replace("\"time\"", "\"Time\"", StringComparison.Ordinal));
        nursery.Write("a.csv", text);
        report = nursery.Import();
        return nursery;
    }
}
