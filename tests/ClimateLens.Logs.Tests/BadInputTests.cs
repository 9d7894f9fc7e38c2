using System.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Tests;

public sealed class BadInputTests
{
    private const string Good = "time,temp,rh\n2025-07-01T10:00,20,80\n";

    [Theory]
    [InlineData("", "import.empty")]
    [InlineData("time,temp,rh\n", "import.headerOnly")]
    [InlineData("zeit,temp,rh\n2025-07-01T10:00,20,80\n", "import.timeColumn")]
    public void Import_UselessFile_IsAProblemAndTheOthersStand(string text, string code)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("bad.csv", text);
        nursery.Write("good.csv", Good);

        ImportReport report = nursery.Import();

        Problem problem = TestNursery.Single(report, code);
        Assert.Equal("bad.csv", problem.File);
        Assert.NotEmpty(problem.Mend);
        Assert.Single(nursery.Rows());
    }

    [Fact]
    public void Import_FaultyFileAgain_IsToldOfAsLongAsItStays()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("bad.csv", "");
        nursery.Write("header.csv", "time,temp,rh\n");
        nursery.Write("rows.csv", "time,temp,rh\nnever,1,2\n");
        nursery.Write("zip.csv", "PK\u0003\u0004");
        nursery.Import();
        string[] codes = ["import.empty", "import.headerOnly", "import.nothingTaken", "import.binary"];

        for (int run = 0; run < 2; run++)
        {
            Assert.Equal(codes.Order(StringComparer.Ordinal), nursery.Import().Problems.Select(p => p.Code).Order(StringComparer.Ordinal));
        }

        File.Delete(Path.Combine(nursery.Folder, "zip.csv"));
        nursery.Write("bad.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        nursery.Write("header.csv", "time,temp,rh\n2025-07-01T10:05,20,80\n");
        nursery.Write("rows.csv", "time,temp,rh\n2025-07-01T10:10,20,80\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Empty(nursery.Import().Problems);
    }

    [Fact]
    public void Import_MissingColumn_NamesTheHeadersAndTheNearest()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,tmep,rh\n2025-07-01T10:00,20,80\n");

        Problem problem = TestNursery.Single(nursery.Import(), "import.column");

        Assert.Equal(("a.csv", 1), (problem.File, problem.Line));
        Assert.Equal("one of \"time\", \"tmep\", \"rh\"; the nearest is \"tmep\"", problem.Expected);
        Assert.Equal(["2025-07-01T09:00:00Z relativeHumidity=80"], nursery.Rows());
    }

    [Fact]
    public void Import_HeaderNameTwice_AsksForThePosition()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,temp,rh\n2025-07-01T10:00,20,21,80\n");

        Problem problem = TestNursery.Single(nursery.Import(), "import.headerTwice");

        Assert.Contains("stand at 2, 3", problem.Expected, StringComparison.Ordinal);
        Assert.Contains("position", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_FolderFileAndNothing_AreNamed()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("[\"*.csv\"]", "[\"folder.csv\", \"*.txt\", \"none.csv\"]", StringComparison.Ordinal));
        Directory.CreateDirectory(Path.Combine(nursery.Folder, "folder.csv"));

        ImportReport report = nursery.Import();

        Assert.Equal(["import.noFiles", "import.noFiles", "import.notFound"], report.Problems.Select(p => p.Code));
        Assert.Equal([Severity.Warning, Severity.Warning, Severity.Error], report.Problems.Select(p => p.Severity));
    }

    [Theory]
    [InlineData(new byte[] { (byte)'P', (byte)'K', 3, 4, 0, 0 }, "ends in .zip")]
    [InlineData(new byte[] { (byte)'R', (byte)'a', (byte)'r', (byte)'!', 8, 0 }, "Unpack")]
    [InlineData(new byte[] { 0x7F, (byte)'E', (byte)'L', (byte)'F', 2, 1, 1, 0, 0, 0, 2 }, "text")]
    [InlineData(new byte[] { (byte)'t', 0, (byte)'i', 0, (byte)'m', 0 }, "utf-16")]
    public void Import_BinaryFile_IsRefusedWithWhatToDo(byte[] bytes, string mend)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", bytes);

        Problem problem = TestNursery.Single(nursery.Import(), "import.binary");

        Assert.Contains(mend, problem.Mend, StringComparison.Ordinal);
        Assert.Equal(Severity.Error, problem.Severity);
    }

    [Fact]
    public void Import_BrokenRows_AreSetAsideWholeAndTheRestStands()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        byte[] text = Encoding.Latin1.GetBytes("time,temp,rh\n2025-07-01T10:00,20,80\n\n2025-07-01T10:05,21\n2025-07-01T10:10,22,80,9\n2025-07-01T10:15,\"23,80\nnot a time,1,1\n2025-07-01T10:20,2\u00e93,80\n2025-07-01T10:25,\0,80\ntime,temp,rh\n,,\n2025-07-01T10:30,24,80,\n=1+1,x,y");
        nursery.Write("a.csv", text);

        ImportReport report = nursery.Import();

        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((12, 2, 8, 0, 2), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.Duplicates, sheet.Blank));
        Assert.Equal(
            [
                (4, null, "import.fields", "2025-07-01T10:05,21"),
                (5, null, "import.fields", "2025-07-01T10:10,22,80,9"),
                (6, null, "import.quotes", "2025-07-01T10:15,\"23,80"),
                (7, null, "import.time", "not a time,1,1"),
                (8, null, "import.bytes", "2025-07-01T10:20,2\u00e93,80"),
                (9, null, "import.bytes", "2025-07-01T10:25,\0,80"),
                (10, null, "import.headerAgain", "time,temp,rh"),
                (13, null, "import.time", "=1+1,x,y"),
            ],
            nursery.SetAside().Select(a => (a.Line, (int?)null, a.Code, a.Text)));
        Assert.Equal(["2025-07-01T09:00:00Z", "2025-07-01T09:30:00Z"], nursery.Rows().Select(r => r[..20]));
    }

    [Fact]
    public void Import_FormulaInASetAsideRow_IsDefusedInTheFile()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", Good + "=cmd,1,1\n");
        nursery.Import();
        string file = Assert.Single(Directory.GetFiles(nursery.Store, "*.csv", SearchOption.AllDirectories));
        Assert.Contains(",import.time,\"'=cmd,1,1\"", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Import_FieldOfTenMegabytes_IsSetAside()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00," + new string('9', 10 << 20) + ",80\n2025-07-01T10:05,20,80\n");

        ImportReport report = nursery.Import();

        Assert.Equal(2, TestNursery.Single(report, "import.fieldTooLong").Line);
        Assert.Equal(10 << 20, nursery.SetAside()[0].Text.Count(c => c == '9'));
        Assert.Single(nursery.Rows());
    }

    [Fact]
    public void Import_RowBeyondAllMeasure_RefusesTheFile()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\nbad,1,1\n2025-07-01T10:00,\"" + new string('9', 70 << 20));

        ImportReport report = nursery.Import();

        Assert.Equal(3, TestNursery.Single(report, "import.rowTooLong").Line);
        Assert.Empty(report.Sheets);
        Assert.Empty(nursery.StoreFiles());
    }

    [Fact]
    public void Import_FiveThousandColumns_AreRead()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        string wide = string.Concat(Enumerable.Range(0, 5000).Select(i => $",c{i}"));
        nursery.Write("a.csv", $"time,temp,rh{wide}\n2025-07-01T10:00,20,80{new string(',', 5000)}\n");
        Assert.Empty(nursery.Import().Problems);
        Assert.Single(nursery.Rows());
    }

    [Fact]
    public void NurseryFileReader_MissingLiteralFile_IsAFaultAtItsPlace()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        string toml = "[nursery]\nname = \"T\"\ntimeZone = \"UTC\"\nlatitude = 0\nlongitude = 0\nelevationM = 0\n[[house]]\nid = \"1\"\nname = \"H\"\n"
            + TestNursery.Climate.Replace("[\"*.csv\"]", "[\"a.csv\", \"gone.csv\"]", StringComparison.Ordinal);
        nursery.Write("a.csv", Good);
        string path = nursery.Write("nursery.toml", toml);

        Problem fault = Assert.Single(Assert.Throws<NurseryFileException>(() => NurseryFileReader.Read(path)).Problems);

        string[] lines = toml.Split('\n');
        Assert.Equal("\"gone.csv\"", lines[fault.Line!.Value - 1].Substring(fault.Column!.Value - 1, 10));
        Assert.Throws<FileNotFoundException>(() => NurseryFileReader.Read(Path.Combine(nursery.Folder, "none.toml")));
        nursery.Write("gone.csv", Good);
        Assert.Equal("1", NurseryFileReader.Read(path).Houses[0].Id);
    }
}
