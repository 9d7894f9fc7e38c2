using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Tests;

/// <summary>What a store must withstand beside its usual run: folders that a user removed, turns of the year, pages among the exports.</summary>
public sealed class StoreEdgeTests
{
    private const string IntervalEnd = """
        [[export]]
        name = "climate"
        house = "1"
        files = ["*.csv"]
        stamps = "intervalEnd"
          [export.time]
          field = "time"
          format = "iso"
          [[export.column]]
          field = "temp"
          channel = "airTemperature"
          unit = "Cel"
        """;

    [Fact]
    public void Version_OfAFileOfWhichNothingIsTaken_Changes()
    {
        // A review counts the rows set aside of such a file: a run that took the store for unchanged would show an old count.
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();
        string before = store.Version;

        nursery.Write("b.csv", "time,temp,rh\nno time,20,80\n");
        store.Import();

        Assert.NotEqual(before, store.Version);
    }

    [Fact]
    public void Version_DoesNotDependOnTheOrderOfImports()
    {
        string Version(params string[] order)
        {
            using var nursery = new TestNursery(TestNursery.Climate);
            using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
            foreach (string name in order)
            {
                nursery.Write($"{name}.csv", $"time,temp,rh\n2025-07-0{(name == "a" ? 1 : 2)}T10:00,20,80\n");
                store.Import();
            }

            return store.Version;
        }

        Assert.Equal(Version("a", "b"), Version("b", "a"));
    }

    [Fact]
    public void Import_AfterTheSetAsideFolderWasRemoved_GoesOn()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n2025-07-01T10:05,off,80\n");
        nursery.Import();
        Directory.Delete(Path.Combine(nursery.Store, "set-aside"), recursive: true);
        nursery.Set(TestNursery.Climate.Replace("-999", "off", StringComparison.Ordinal));

        nursery.Import(); // now nothing is set aside, and the file that held it is no longer in force

        Assert.Equal(2, nursery.Rows().Length);
    }

    [Fact]
    public void Load_WhereOneStampLiesInTheNextYear_KeepsTheStep()
    {
        // The last interval of a year ends with it, so its stamp is the only one of the next year's part.
        using var nursery = new TestNursery(IntervalEnd, "UTC");
        nursery.Write("a.csv", "time,temp\n2023-12-31T23:50,10\n2023-12-31T23:55,10\n2024-01-01T00:00,10\n");
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();

        HouseInput input = store.Load(nursery.House, new Interval(Instant.FromUtc(2023, 12, 25, 0, 0), Instant.FromUtc(2024, 1, 1, 0, 0)), Duration.Zero);

        ReadingBatch batch = Assert.Single(input.Batches);
        Assert.Equal((3, 300), (batch.UtcMicros.Length, batch.StepSeconds));
    }

    [Fact]
    public void Import_ByAPatternOverAllFolders_LeavesThePagesAlone()
    {
        using var nursery = new TestNursery(TestNursery.Climate.Replace("*.csv", "**/*.csv", StringComparison.Ordinal));
        nursery.Write("exports/a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        nursery.Write("site/house-1/2025-W27/hours.csv", "start,airTemperatureC\n2025-07-01T10:00:00+01:00,20\n");

        ImportReport report = nursery.Import();

        Assert.Empty(report.Problems);
        Assert.Equal("exports/a.csv", Assert.Single(report.Sheets).File);
    }
}
