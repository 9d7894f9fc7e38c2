using System.Text;

namespace ClimateLens.Logs.Tests;

public sealed class DialectTests
{
    [Theory]
    [InlineData("utf-8", true)]
    [InlineData("utf-16le", true)]
    [InlineData("utf-16be", true)]
    [InlineData("utf-16le", false)]
    [InlineData("utf-16be", false)]
    [InlineData("windows-1252", false)]
    [InlineData("iso-8859-1", false)]
    public void Encoding_WithAndWithoutMark_IsRead(string name, bool mark)
    {
        Encoding encoding = Logs.Text.ExportEncodings.Find(name)!;
        Encoding marked = name switch { "utf-8" => new UTF8Encoding(true), "utf-16le" => new UnicodeEncoding(false, true), "utf-16be" => new UnicodeEncoding(true, true), _ => encoding };
        using var nursery = new TestNursery(Toml("encoding = \"" + (mark ? "utf-8" : name) + "\"\ndelimiter = \";\"\ndecimalChar = \",\""));
        byte[] text = encoding.GetBytes("Zeit;Wärme °C;rF\r\n2025-01-01T10:00;\"20,5\"; 80 \r\n2025-01-01T10:05;ä;81\r\n");
        nursery.Write("a.csv", [.. mark ? marked.GetPreamble() : [], .. text]);

        Assert.Equal("import.number", Assert.Single(nursery.Import().Problems).Code);

        Assert.Equal("2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", nursery.Rows()[0]);
        Assert.Equal("Ã¤", Assert.Single(nursery.SetAside()).Text); // ä in UTF-8, as Latin-1 shows it
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n")]
    [InlineData("\r")]
    public void LineEnds_OfAnyKind_AreRead(string end)
    {
        using var nursery = new TestNursery(Toml("delimiter = \"\\t\""));
        nursery.Write("a.csv", string.Join(end, "Zeit\tWärme °C\trF", "2025-01-01T10:00\t20.5\t80", "2025-01-01T10:05\t20.5\t80"));
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal(2, nursery.Rows().Length);
    }

    [Fact]
    public void TitleLinesAndComments_ArePassedOver()
    {
        using var nursery = new TestNursery(Toml("headerRow = 3\ndataRow = 5\ncommentChar = \"#\""));
        nursery.Write("a.csv", "Export of \"something\", odd\n\nZeit,Wärme °C,rF\n,°C,%\n# made up\n2025-01-01T10:00,20.5,80\n#2025-01-01T10:05,20.5,80\n");
        var report = nursery.Import();
        Assert.Empty(report.Problems);
        Assert.Equal(1, report.Sheets[0].RowsRead);
        Assert.Single(nursery.Rows());
    }

    [Fact]
    public void NoHeader_PositionsServe()
    {
        string toml = Toml("headerRow = 0\nquoteChar = \"'\"").Replace("field = \"Zeit\"", "position = 1", StringComparison.Ordinal)
            .Replace("field = \"Wärme °C\"", "position = 3", StringComparison.Ordinal).Replace("field = \"rF\"", "position = 4", StringComparison.Ordinal);
        using var nursery = new TestNursery(toml);
        nursery.Write("a.csv", "2025-01-01T10:00,x,'20.5',80\n2025-01-01T10:05,\",20.5,81\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Equal("2025-01-01T10:00:00Z airTemperature=20.5 relativeHumidity=80", nursery.Rows()[0]);
        Assert.Equal(2, nursery.Rows().Length);
    }

    [Fact]
    public void GroupMark_IsTakenOnlyBetweenThrees()
    {
        using var nursery = new TestNursery(Toml("delimiter = \";\"\ndecimalChar = \",\"\ngroupChar = \".\""));
        nursery.Write("a.csv", "Zeit;Wärme °C;rF\n2025-01-01T10:00;1.020,5;80\n2025-01-01T10:05;20.5;80\n");
        Assert.Equal(3, TestNursery.Single(nursery.Import(), "import.decimal").Line);
        Assert.Equal("2025-01-01T10:00:00Z airTemperature=1020.5 relativeHumidity=80", nursery.Rows()[0]);
    }

    [Fact]
    public void MissingCodes_CoverTheirOtherSpellings()
    {
        using var nursery = new TestNursery(Toml("missingValues = [\"-999\", \"---\", \"NA\"]"));
        nursery.Write("a.csv", "Zeit,Wärme °C,rF\n2025-01-01T10:00,-999.00,80\n2025-01-01T10:05, --- ,80\n2025-01-01T10:10,NA,80\n2025-01-01T10:15,,80\n2025-01-01T10:20,-998,80\n2025-01-01T10:25,wet,80\n");
        var report = nursery.Import();
        Assert.Equal(7, TestNursery.Single(report, "import.number").Line);
        Assert.Equal(1, report.Sheets[0].CellsNotRead);
        Assert.DoesNotContain(report.Problems, p => p.Code is "import.noValue" or "import.missingCode");
        Assert.Equal("2025-01-01T10:20:00Z airTemperature=-998 relativeHumidity=80", Assert.Single(nursery.Rows(), row => row.Contains("airTemperature", StringComparison.Ordinal)));
    }

    [Fact]
    public void Switches_AreReadAsNumbersAndWords()
    {
        string toml = Toml("").Replace("channel = \"airTemperature\"", "channel = \"fan\"", StringComparison.Ordinal).Replace("unit = \"Cel\"", "unit = \"1\"", StringComparison.Ordinal);
        using var nursery = new TestNursery(toml);
        nursery.Write("a.csv", "Zeit,Wärme °C,rF\n2025-01-01T10:00,1,80\n2025-01-01T10:05,OFF,80\n2025-01-01T10:10,true,80\n2025-01-01T10:15,No,80\n2025-01-01T10:20,maybe,80\n");
        Assert.Equal((6, 2), (TestNursery.Single(nursery.Import(), "import.switch").Line, TestNursery.Single(ExportChecker.Check(nursery.Settings, nursery.Folder), "import.switch").Column));
        Assert.Equal([1, 0, 1, 0, double.NaN], nursery.Load().Batches[0].Columns["fan"]);
    }

    [Fact]
    public void DateAndTimeInTwoColumns_AreJoined()
    {
        string toml = Toml("").Replace("format = \"iso\"", "timeOfDayField = \"Uhr\"\n    format = \"dd.MM.yyyy HH:mm:ss\"", StringComparison.Ordinal);
        using var nursery = new TestNursery(toml);
        nursery.Write("a.csv", "Zeit,Uhr,Wärme °C,rF\n01.07.2025,10:00:30,20.5,80\n01.07.2025,,20.5,80\n");
        Assert.Equal("\"01.07.2025 \"", TestNursery.Single(nursery.Import(), "import.time").Found);
        Assert.Equal("2025-07-01T09:00:30Z airTemperature=20.5 relativeHumidity=80", Assert.Single(nursery.Rows()));
    }

    [Fact]
    public void Globs_ReachIntoFoldersButNotIntoTheStore()
    {
        using var nursery = new TestNursery(Toml("").Replace("*.csv", "**/*.csv", StringComparison.Ordinal));
        nursery.Write("b/2025/a.csv", "Zeit,Wärme °C,rF\n2025-01-01T10:00,20.5,80\nx,1,1\n");
        nursery.Write("a.csv", "Zeit,Wärme °C,rF\n2025-01-01T10:05,20.5,80\n");
        Assert.Equal(["a.csv", "b/2025/a.csv"], nursery.Import().Sheets.Select(s => s.File));
        Assert.Equal((0, 2), (nursery.Import().FilesRead, nursery.Import().FilesKnown));
    }

    private static string Toml(string dialect) => $"""
        [[export]]
        name = "climate"
        house = "1"
        files = ["*.csv"]
        {dialect}
          [export.time]
          field = "Zeit"
          format = "iso"
          [[export.column]]
          field = "Wärme °C"
          channel = "airTemperature"
          unit = "Cel"
          [[export.column]]
          field = "rF"
          channel = "relativeHumidity"
          unit = "%"
        """;
}
