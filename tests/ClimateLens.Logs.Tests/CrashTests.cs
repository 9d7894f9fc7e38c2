namespace ClimateLens.Logs.Tests;

/// <summary>
/// Stops an import at each step of writing by leaving on disk what a killed run would leave, then lets the next run
/// end it: the store must be that of an undisturbed one.
/// </summary>
public sealed class CrashTests
{
    private const string First = "time,temp,rh\n2024-12-31T23:00,20,80\n2025-07-01T10:00,20,80\n";
    private const string Second = "time,temp,rh\n2024-12-31T23:00,21,80\n2025-07-01T10:05,20,80\nx,1,1\n";

    [Fact]
    public void Killed_BeforeOrAfterTheLedger_TheNextRunEndsWithTheSameStore()
    {
        using var whole = new TestNursery(TestNursery.Climate);
        whole.Write("a.csv", First);
        whole.Import();
        Dictionary<string, byte[]> before = Bytes(whole);
        whole.Write("b.csv", Second);
        whole.Import();
        Dictionary<string, byte[]> after = Bytes(whole);
        string[] changed = [.. after.Keys.Where(path => path != "ledger.json" && !(before.TryGetValue(path, out byte[]? old) && old.AsSpan().SequenceEqual(after[path]))).Order(StringComparer.Ordinal)];
        Assert.Equal(4, changed.Length); // two years, the set-aside rows and the sheet

        for (int written = 0; written <= changed.Length; written++)
        {
            for (int torn = 0; torn < 2; torn++)
            {
                Verify(whole, disk => Leave(disk, before, after, changed, staged: written, renamed: 0, ledger: false, torn == 1));
            }
        }

        for (int renamed = 0; renamed <= changed.Length; renamed++)
        {
            Verify(whole, disk => Leave(disk, before, after, changed, staged: changed.Length, renamed, ledger: true, torn: false));
        }
    }

    [Theory]
    [InlineData("truncate")]
    [InlineData("delete")]
    [InlineData("flip")]
    public void DamagedPart_IsBuiltAgainFromTheExports(string damage)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", First);
        nursery.Write("b.csv", Second);
        nursery.Import();
        var before = nursery.StoreFiles();
        string[] rows = nursery.Rows();
        string part = Path.Combine(nursery.Store, "readings/house=1/source=climate/year=2025/part.parquet");
        byte[] bytes = File.ReadAllBytes(part);
        switch (damage)
        {
            case "truncate": File.WriteAllBytes(part, bytes[..(bytes.Length / 2)]); break;
            case "delete": File.Delete(part); break;
            default: bytes[bytes.Length / 2] ^= 0xFF; File.WriteAllBytes(part, bytes); break;
        }

        if (damage != "flip")
        {
            Assert.Contains("year=2025", TestNursery.Single(nursery.Import(), "store.damaged").File, StringComparison.Ordinal);
        }

        Assert.Equal(rows, nursery.Rows());
        Assert.Equal(before, nursery.StoreFiles());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("{ torn")]
    public void LostLedger_IsBuiltAgain_AndRowsOfGoneFilesStay(string? ledger)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        string gone = nursery.Write("a.csv", First);
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:05,20,80\n");
        nursery.Import();
        string[] rows = nursery.Rows();
        File.Delete(gone);
        string path = Path.Combine(nursery.Store, "ledger.json");
        File.Delete(path);
        if (ledger is not null)
        {
            File.WriteAllText(path, ledger);
        }

        TestNursery.Single(nursery.Import(), "store.ledgerLost");

        Assert.Equal(rows, nursery.Rows());
        Assert.Empty(nursery.Import().Problems);
    }

    private static void Verify(TestNursery whole, Action<string> leave)
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", First);
        nursery.Write("b.csv", Second);
        leave(nursery.Store);
        nursery.Import();
        Assert.Equal(whole.StoreFiles(), nursery.StoreFiles());
    }

    /// <summary>The disk of a run that was killed after so many files were staged, the ledger was or was not written, and so many were renamed.</summary>
    private static void Leave(string store, Dictionary<string, byte[]> before, Dictionary<string, byte[]> after, string[] changed, int staged, int renamed, bool ledger, bool torn)
    {
        foreach ((string path, byte[] bytes) in before)
        {
            Put(store, path, bytes);
        }

        for (int i = 0; i < staged; i++)
        {
            bool last = i == staged - 1;
            Put(store, i < renamed ? changed[i] : changed[i] + ".new", torn && last ? after[changed[i]][..^7] : after[changed[i]]);
        }

        if (ledger)
        {
            Put(store, "ledger.json", after["ledger.json"]);
        }
        else if (torn)
        {
            Put(store, "ledger.json.new", after["ledger.json"][..^9]);
        }
    }

    private static void Put(string store, string path, byte[] bytes)
    {
        string full = Path.Combine(store, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
    }

    private static Dictionary<string, byte[]> Bytes(TestNursery nursery)
        => nursery.StoreFiles().Keys.ToDictionary(path => path, path => File.ReadAllBytes(Path.Combine(nursery.Store, path)));
}
