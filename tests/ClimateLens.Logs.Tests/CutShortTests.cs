namespace ClimateLens.Logs.Tests;

/// <summary>Last cells that may have lost their end: where the file breaks off, or a line end stands in a number.</summary>
public sealed class CutShortTests
{
    private const string Start = "time,temp,rh\n2025-07-01T10:00,20.5,80\n2025-07-01T10:05,20.6,81\n";

    [Theory]
    [InlineData("8")]
    [InlineData("")]
    public void FileThatBreaksOffInItsLastCell_IsNotBelieved_UntilItGrows(string cell)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", Start + "2025-07-01T10:10,20.7," + cell);
        ImportReport report = nursery.Import();
        Assert.Equal((4, 3), (TestNursery.Single(report, "import.cutShort").Line, TestNursery.Single(report, "import.cutShort").Column));
        Assert.Equal("2025-07-01T09:10:00Z airTemperature=20.7", nursery.Rows()[2]);

        nursery.Write("a.csv", Start + "2025-07-01T10:10,20.7,82\n2025-07-01T10:15,20.8,83\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal("2025-07-01T09:10:00Z airTemperature=20.7 relativeHumidity=82", nursery.Rows()[2]);
    }

    [Theory]
    [InlineData("82", "as long as the cell above")]
    [InlineData("82.5", "longer")]
    [InlineData("\"8\"", "its quote is closed")]
    [InlineData("8\n", "the line has its end")]
    [InlineData("8\r", "the line has another end")]
    public void LastCellThatIsWhole_Stands(string end, string why)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", Start + "2025-07-01T10:10,20.7," + end);
        Assert.True(nursery.Import().Problems.IsEmpty, why);
        Assert.Equal(2, nursery.Rows()[2].Count(c => c == '='));
    }

    [Fact]
    public void LastCellWithAllItsDecimals_Stands_ThoughItIsShorter()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,rh,temp\n" + string.Concat(Enumerable.Range(0, 30).Select(i => $"2025-07-01T10:{i:00},80,{(i < 29 ? $"10.{i % 10}\n" : "9.9")}")));
        Assert.Empty(nursery.Import().Problems);
        Assert.EndsWith("airTemperature=9.9 relativeHumidity=80", nursery.Rows()[29], StringComparison.Ordinal);
    }

    [Fact]
    public void PieceOfANumberInALineOfItsOwn_TakesBackTheCellBeforeIt()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", Start + "2025-07-01T10:10,20.7,8\n2\n2025-07-01T10:15,20.8,83\n");
        nursery.Import();
        Assert.Equal([(5, "import.fields"), (4, "import.cutShort")], nursery.SetAside().Select(a => (a.Line, a.Code)));
        Assert.Equal("2025-07-01T09:10:00Z airTemperature=20.7", nursery.Rows()[2]);
        Assert.Equal(4, nursery.Rows().Length);
    }

    [Fact]
    public void OtherLineOfItsOwn_TakesNothingBack()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", Start + "%%%\n2025-07-01T10:15,20.8,83\n# 12\n");
        nursery.Import();
        Assert.DoesNotContain(nursery.SetAside(), a => a.Code == "import.cutShort");
        Assert.All(nursery.Rows(), r => Assert.Equal(2, r.Count(c => c == '=')));
    }
}
