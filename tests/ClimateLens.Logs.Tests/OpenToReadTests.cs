namespace ClimateLens.Logs.Tests;

/// <summary>A store opened beside other readers.</summary>
public sealed class OpenToReadTests
{
    [Fact]
    public void OpenToRead_TwiceAtOnce_Works_AndKeepsWritersOut()
    {
        using TestNursery nursery = Imported();
        using (ReadingStore one = ReadingStore.OpenToRead(nursery.Settings, nursery.Folder), two = ReadingStore.OpenToRead(nursery.Settings, nursery.Folder))
        {
            Assert.Equal(one.Version, two.Version);
            Assert.NotNull(two.Extent("1"));
            Assert.Throws<StoreLockedException>(() => ReadingStore.Open(nursery.Settings, nursery.Folder));
            Assert.Throws<InvalidOperationException>(() => two.Import());
        }

        using ReadingStore alone = ReadingStore.Open(nursery.Settings, nursery.Folder);
        Assert.Throws<StoreLockedException>(() => ReadingStore.OpenToRead(nursery.Settings, nursery.Folder));
    }

    [Fact]
    public void OpenToRead_DamagedLedger_OrNone_IsUnavailable_AndChangesNothing()
    {
        using TestNursery nursery = Imported();
        string ledger = Path.Combine(nursery.Store, "ledger.json");
        File.WriteAllText(ledger, "{");
        Assert.Throws<StoreUnavailableException>(() => ReadingStore.OpenToRead(nursery.Settings, nursery.Folder));
        Assert.Equal("{", File.ReadAllText(ledger));
        File.Delete(ledger);
        Assert.Throws<StoreUnavailableException>(() => ReadingStore.OpenToRead(nursery.Settings, nursery.Folder));
    }

    [Fact]
    public void OpenToRead_DamagedPart_IsToldAndLeftAsItIs()
    {
        using TestNursery nursery = Imported();
        string part = Directory.GetFiles(nursery.Store, "part.parquet", SearchOption.AllDirectories).Single();
        File.WriteAllText(part, "spoilt");
        using ReadingStore store = ReadingStore.OpenToRead(nursery.Settings, nursery.Folder);
        StoreUnavailableException fault = Assert.Throws<StoreUnavailableException>(() => store.Load(nursery.House, new NodaTime.Interval(NodaTime.Instant.FromUtc(2025, 6, 30, 0, 0), NodaTime.Instant.FromUtc(2025, 7, 7, 0, 0)), NodaTime.Duration.Zero));
        Assert.Contains("an import mends that", fault.Message, StringComparison.Ordinal);
        Assert.Equal("spoilt", File.ReadAllText(part));
    }

    private static TestNursery Imported()
    {
        var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n2025-07-01T10:05,20,80\n");
        nursery.Import();
        return nursery;
    }
}
