using ClimateLens.Nursery;

namespace ClimateLens.Logs.Tests;

/// <summary>Pot checks that cannot be: set aside with line and reason, while the rows around them stand.</summary>
public sealed class PotCheckTests
{
    private const string Checks = """
        [[export]]
        name = "pots"
        house = "1"
        kind = "potChecks"
        files = ["*.csv"]
          [export.time]
          field = "time"
          format = "yyyy-MM-dd HH:mm"
          [[export.column]]
          field = "bench"
          channel = "bench"
          [[export.column]]
          field = "level"
          channel = "level"
          [[export.column]]
          field = "weight"
          channel = "weight"
          unit = "g"
        """;

    private const string House = """
        benches = ["Bench A", "Bench B"]
          [house.pots]
          dryWeightG = 620
          soakedWeightG = 1180
          [[house.crop]]
          species = "cyclamen"
          potted = 2025-08-04
          sale = 2025-11-17
        """;

    private const string Header = "time,bench,level,weight\n";

    [Theory]
    [InlineData("2025-10-13 07:10,Bench A,6,", "import.level", 3, "1 to 5, halves allowed")]
    [InlineData("2025-10-13 07:10,Bench A,2.7,", "import.level", 3, "1 to 5, halves allowed")]
    [InlineData("2025-10-13 07:10,Bench A,0.5,", "import.level", 3, "1 to 5, halves allowed")]
    [InlineData("2025-10-13 07:10,Bench A,3,619", "import.weightBelowDry", 4, "620 g (the dry pot) or more")]
    [InlineData("2025-08-03 07:10,Bench A,3,", "import.outsideCrop", null, "a time of cyclamen (2025-08-04 to 2025-11-17)")]
    [InlineData("2025-11-18 07:10,Bench A,3,", "import.outsideCrop", null, "a time of cyclamen (2025-08-04 to 2025-11-17)")]
    [InlineData("2025-10-13 07:10,Bnech A,3,", "import.bench", 2, "one of \"Bench A\", \"Bench B\"; did you mean \"Bench A\"?")]
    public void Import_ImpossibleCheck_IsSetAsideWithLineAndReason(string row, string code, int? column, string expected)
    {
        using var nursery = TestNursery.WithHouse(House, Checks);
        nursery.Write("a.csv", Header + "2025-10-13 07:00,Bench A,3.5,900\n" + row + "\n2025-10-13 07:20,bench b,2,\n");

        ImportReport report = nursery.Import();

        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((3, 2, 1), (sheet.RowsRead, sheet.Accepted, sheet.SetAside));
        Nursery.Problems.Problem problem = TestNursery.Single(report, code);
        Assert.Equal((3, column, expected), (problem.Line, problem.Column, problem.Expected));
    }

    [Theory]
    [InlineData("2025-10-13 07:10,Bench A,5,")]
    [InlineData("2025-10-13 07:10,Bench A,1,620")]
    [InlineData("2025-08-04 07:10,Bench A,3,")]
    [InlineData("2025-11-17 19:10,BENCH A,3,")]
    [InlineData("2025-10-13 07:10,,3,")]
    public void Import_CheckAtTheLimits_Stands(string row)
    {
        using var nursery = TestNursery.WithHouse(House, Checks);
        nursery.Write("a.csv", Header + row + "\n");
        ImportSheet sheet = Assert.Single(nursery.Import().Sheets);
        Assert.Equal((1, 0, 0), (sheet.Accepted, sheet.SetAside, sheet.CellsNotRead));
    }

    [Fact]
    public void Import_SameColumnsInAWorkbook_ReadAlike()
    {
        using var nursery = TestNursery.WithHouse(House, Checks.Replace("*.csv", "*.xlsx", StringComparison.Ordinal));
        nursery.Write("a.xlsx", MadeWorkbook.Of(("Pots", false,
        [
            ["time", "bench", "level", "weight"],
            ["2025-10-13 07:00", "Bench A", 3.5, 900.0],
            ["2025-10-13 07:10", "Bench A", 6.0, ""],
        ])));

        ImportReport report = nursery.Import();

        Assert.Equal((2, 1, 1), (report.Sheets[0].RowsRead, report.Sheets[0].Accepted, report.Sheets[0].SetAside));
        Assert.Equal(3, TestNursery.Single(report, "import.level").Line);
    }

    [Fact]
    public void Import_HouseWithoutBenchesWeightsAndDays_TakesWhatIsWritten()
    {
        using var nursery = new TestNursery(Checks);
        nursery.Write("a.csv", Header + "2025-10-13 07:10,anything,3,1\n");
        Assert.Equal(1, Assert.Single(nursery.Import().Sheets).Accepted);
    }
}
