using System.Globalization;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using DuckDB.NET.Data;

namespace ClimateLens.Logs.Tests;

public sealed class RecordTests
{
    private const string Waterings = """
        [[export]]
        name = "log"
        kind = "waterings"
        files = ["*.csv"]
        delimiter = ";"
        decimalChar = ","
          [export.time]
          field = "start"
          format = "dd-MM-yyyy HH:mm"
          [[export.column]]
          field = "house"
          channel = "house"
          [[export.column]]
          field = "end"
          channel = "end"
          [[export.column]]
          field = "how"
          channel = "method"
          [[export.column]]
          field = "gal"
          channel = "litres"
          unit = "[gal_us]"
          [[export.column]]
          field = "note"
          channel = "note"
        """;

    [Fact]
    public void Import_Waterings_AreKeptByHouseInSiAndUtc()
    {
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", "start;house;end;how;gal;note\n01-07-2025 15:10;1;15:40;Overhead boom;2,0;\"late; again\nsorry\"\n01-07-2025 23:50;2;00:10;drip;;\n01-07-2025 15:00;9;;drip;1;\n01-07-2025 09:00;1;soon;bucket;x;y\n");

        ImportReport report = nursery.Import();

        Assert.Equal(["import.house", "import.timeCell", "import.method", "import.number"], report.Problems.Select(p => p.Code));
        ImportSheet sheet = Assert.Single(report.Sheets);
        Assert.Equal((4, 3, 1, 3), (sheet.RowsRead, sheet.Accepted, sheet.SetAside, sheet.CellsNotRead));
        Assert.Collection(
            nursery.Load().Records,
            r => Assert.Equal("2025-07-01T08:00:00Z method=bucket note=y", Text(r)),
            r => Assert.Equal("2025-07-01T14:10:00Z end=2025-07-01T14:40:00Z litres=7.570823568 method=overheadBoom note=late; again\nsorry", Text(r)));
        RecordRow other = Assert.Single(nursery.Load(1).Records);
        Assert.Equal("2025-07-01T22:50:00Z end=2025-07-01T23:10:00Z method=drip", Text(other));
        Assert.Equal((RecordKind.Waterings, "2", "log", "a.csv", 4), (other.Kind, other.House, other.Source, other.File, other.Line));
    }

    [Fact]
    public void Import_OpenQuote_SpoilsOneRowOnly()
    {
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", "start;house;end;how;gal;note\n01-07-2025 15:10;1;15:40;drip;1;\"open\n02-07-2025 15:10;1;15:40;drip;1;fine\n");
        Assert.Equal(2, TestNursery.Single(nursery.Import(), "import.quotes").Line);
        Assert.Single(nursery.Load().Records);
    }

    [Fact]
    public void Import_LikeRecordsOfOneFile_AllStand_AndTwiceAreDuplicates()
    {
        using var nursery = new TestNursery(Waterings);
        const string row = "01-07-2025 15:10;1;;drip;1;\n";
        nursery.Write("a.csv", "start;house;end;how;gal;note\n" + row + row);
        Assert.Equal(2, nursery.Import().Sheets[0].Accepted);
        nursery.Write("b.csv", "start;house;end;how;gal;note\n" + row + row + row);

        ImportSheet sheet = nursery.Import().Sheets[0];

        Assert.Equal((3, 1, 2), (sheet.RowsRead, sheet.Accepted, sheet.Duplicates));
        Assert.Equal(3, nursery.Load().Records.Length);
    }

    [Fact]
    public void Import_CorrectedRecord_ReplacesTheOldOneWithinTheFilesSpan()
    {
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", "start;house;end;how;gal;note\n01-06-2025 10:00;1;;drip;1;\n01-07-2025 15:10;1;;drip;1;\n02-07-2025 15:10;1;;drip;1;\n03-07-2025 15:10;1;;drip;1;\n");
        nursery.Import();
        nursery.Write("a.csv", "start;house;end;how;gal;note\n01-07-2025 15:10;1;;drip;1;\n02-07-2025 16:10;1;;drip;1;\n03-07-2025 15:10;1;;drip;1;\n");

        ImportReport report = nursery.Import();

        Assert.Equal((1, 2, 1), (report.Sheets[0].Accepted, report.Sheets[0].Duplicates, report.Sheets[0].Conflicts));
        Assert.Equal(["06-01 09:00", "07-01 14:10", "07-02 15:10", "07-03 14:10"], nursery.Load().Records.Select(r => r.At.ToString("MM-dd HH:mm", CultureInfo.InvariantCulture)));
        Assert.Equal((4, "import.replaced"), (nursery.SetAside()[0].Line, nursery.SetAside()[0].Code));
        Assert.StartsWith("2025-07-02T14:10:00Z; litres=", nursery.SetAside()[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_RecordsThatAreAgainWhatTheyWere_WinOverTheVersionBetween()
    {
        const string right = "start;house;end;how;gal;note\n01-07-2025 15:10;1;;drip;1;\n02-07-2025 15:10;1;;drip;1;\n03-07-2025 15:10;1;;drip;1;\n";
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", right);
        nursery.Import();
        nursery.Write("a.csv", right.Replace("02-07-2025 15:10", "02-07-2025 18:10", StringComparison.Ordinal));
        nursery.Import();
        nursery.Write("a.csv", right);

        Assert.Equal(1, nursery.Import().FilesRead);

        Assert.Equal(["07-01 14:10", "07-02 14:10", "07-03 14:10"], nursery.Load().Records.Select(r => r.At.ToString("MM-dd HH:mm", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Import_ChangedUnit_GivesTheStoreOfAFreshImport()
    {
        const string text = "start;house;end;how;gal;note\n01-07-2025 15:10;1;;drip;1;\n01-07-2025 15:10;2;;drip;1;\n";
        string litres = Waterings.Replace("[gal_us]", "L", StringComparison.Ordinal);
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", text);
        nursery.Import();
        nursery.Set(litres);
        nursery.Import();
        using var fresh = new TestNursery(litres);
        fresh.Write("a.csv", text);
        fresh.Import();
        Assert.Equal(fresh.StoreFiles(), nursery.StoreFiles());
        Assert.Equal("1", nursery.Load().Records[0].Fields["litres"]);
    }

    [Fact]
    public void Import_NewHouse_TakesItsRowsUpAgain()
    {
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", "start;house;end;how;gal;note\n01-07-2025 15:10;3;;drip;1;\n");
        nursery.Import();
        nursery.Set("[[house]]\nid = \"3\"\nname = \"House 3\"\n" + Waterings);
        Assert.Empty(nursery.Import().Problems);
        Assert.Single(nursery.Load(2).Records);
        Assert.Empty(nursery.SetAside());
    }

    [Fact]
    public void Records_AreReadByDuckDb()
    {
        using var nursery = new TestNursery(Waterings);
        nursery.Write("a.csv", "start;house;end;how;gal;note\n01-07-2025 15:10;1;15:40;drip;1;\n");
        nursery.Import();
        using var duck = new DuckDBConnection("DataSource=:memory:");
        duck.Open();
        using DuckDBCommand command = duck.CreateCommand();
        command.CommandText = $"select epoch(\"end\" - utc), litres, method, note, kind, line from read_parquet('{nursery.Store}/records/**/part.parquet', hive_partitioning = true)";
        using DuckDBDataReader reader = command.ExecuteReader();
        Assert.True(reader.Read());
        Assert.Equal(1800, reader.GetDouble(0));
        Assert.Equal(3.785411784, reader.GetDouble(1)); // the US gallon in litres, NIST SP 811
        Assert.Equal(("drip", "waterings", 2), (reader.GetString(2), reader.GetString(4), reader.GetInt32(5)));
        Assert.True(reader.IsDBNull(3));
    }

    private static string Text(RecordRow row)
        => row.At.ToString("uuuu-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture) + string.Concat(row.Fields.Select(f => $" {f.Key}={f.Value}"));
}
