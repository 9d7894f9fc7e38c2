using System.Text;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Imports;
using CsvHelper;

namespace ClimateLens.Logs.Tests;

public sealed class SetAsideListTests
{
    [Fact]
    public void SetAside_RowsAndCells_ComeBackWithFoundAndExpected()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,=1+1,80\nyesterday,20,80\n2025-07-01T10:05\n");
        nursery.Import();
        SetAsideFile file = Assert.Single(List(nursery));
        Assert.Equal(("a.csv", "1", null, "climate", false, false), (file.File, file.House, file.Kind, file.Source, file.IsOlder, file.IsLost));
        Assert.Equal(
            [
                new SetAsideRow(2, 2, "import.number", SetAsideKind.Cell, "=1+1", "=1+1", "a number like 21.5"),
                new SetAsideRow(3, 1, "import.time", SetAsideKind.Row, "yesterday,20,80", "yesterday", "an ISO 8601 time like 2025-10-13T14:05"),
                new SetAsideRow(4, null, "import.fields", SetAsideKind.Row, "2025-07-01T10:05", "1 fields", "3 fields"),
            ],
            file.Rows());
    }

    [Fact]
    public void SetAside_CorrectedFile_LeavesTheOldRowsToItsOlderVersion()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\nx,20,80\n");
        nursery.Import();
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\ny,20,80\n");
        nursery.Import();
        Assert.Equal([true, false], List(nursery).Select(f => f.IsOlder));
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n2025-07-01T10:05,20,80\n");
        nursery.Import();
        Assert.Equal([true, true], List(nursery).Select(f => f.IsOlder));
    }

    [Fact]
    public void SetAside_CorrectedNurseryFile_TakesTheRowsUp()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01 10:00,20,80\n02.07.2025 10:00,20,80\n");
        nursery.Import();
        Assert.Equal([3], Assert.Single(List(nursery)).Rows().Select(r => r.Line));
        nursery.Set(TestNursery.Climate.Replace("\"iso\"", "\"dd.MM.yyyy HH:mm\"", StringComparison.Ordinal));
        nursery.Import();
        Assert.Equal(["2025-07-02T09:00:00Z airTemperature=20 relativeHumidity=80"], nursery.Rows());
        Assert.Equal([2], Assert.Single(List(nursery)).Rows().Select(r => r.Line));
    }

    [Fact]
    public void SetAside_FileNamesThatASpreadsheetWouldRun_AreGuarded()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("=cmd|' !A1.csv", "time,temp,rh\nx,20,80\n");
        nursery.Import();
        string path = Assert.Single(Directory.GetFiles(Path.Combine(nursery.Store, "set-aside"), "*.csv", SearchOption.AllDirectories));
        using var reader = CsvReader.Create(File.ReadAllBytes(path), new CsvReaderOptions { Separator = ',' });
        Assert.True(reader.Read());
        Assert.Equal("'=cmd|' !A1.csv", Encoding.UTF8.GetString(reader.GetSpan(0)));
        Assert.Equal("=cmd|' !A1.csv", Assert.Single(List(nursery)).File);
    }

    [Fact]
    public void SetAside_LostFileOfRows_IsToldAndNoCrash()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\nx,20,80\n");
        nursery.Import();
        File.Delete(Assert.Single(Directory.GetFiles(Path.Combine(nursery.Store, "set-aside"), "*.csv", SearchOption.AllDirectories)));
        SetAsideFile file = Assert.Single(List(nursery));
        Assert.True(file.IsLost);
        Assert.Empty(file.Rows());
    }

    private static SetAsideFile[] List(TestNursery nursery)
    {
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        return [.. store.SetAside];
    }
}
