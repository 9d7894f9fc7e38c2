using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Tests;

/// <summary>
/// Lets every single call to the disk fail in turn, for a moment or for good: the import ends with one clear error, what was in force
/// stays readable, and the next import on a sound disk ends with the store of an undisturbed one.
/// </summary>
public sealed class FailingDiskTests
{
    private const string First = "time,temp,rh\n2024-12-31T23:00,20,80\n2025-07-01T10:00,20,80\n";
    private const string Second = "time,temp,rh\n2024-12-31T23:00,21,80\n2025-07-01T10:05,20,80\nx,1,1\n";

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void EveryCallInTurn_LeavesAStoreThatTheNextImportMends(bool staysFull, bool littleMemory)
    {
        using TestNursery whole = Prepared();
        string[] before = whole.Rows();
        MemoryLimits limits = littleMemory ? Little : MemoryLimits.Usual;
        using (ReadingStore store = ReadingStore.Open(whole.Settings, whole.Folder, Store.StoreDisk.Real, limits))
        {
            store.Import();
        }

        string[] after = whole.Rows();
        int calls = 0;
        for (int n = 1; ; n++)
        {
            using TestNursery nursery = Prepared();
            FailingDisk disk = new(n, staysFull);
            if (!Fails(nursery, disk, limits) && !disk.Failed)
            {
                break; // the run needs fewer calls than n
            }

            string[] left = nursery.Rows();
            Assert.True(left.SequenceEqual(before) || left.SequenceEqual(after), $"call {n}: the store holds {string.Join(" | ", left)}");
            nursery.Import();
            Assert.Equal(whole.StoreFiles(), nursery.StoreFiles());
            calls = n;
        }

        Assert.True(calls > 15, $"only {calls} calls to the disk could fail");
    }

    /// <summary>So little that rows go to the disk while they are read.</summary>
    private static MemoryLimits Little => MemoryLimits.Usual with { BlockRows = 1, FileBytes = 1, SourceBytes = 1 };

    /// <summary>Whether the import ended with an error of the store; any other exception is a defect.</summary>
    private static bool Fails(TestNursery nursery, FailingDisk disk, MemoryLimits limits)
    {
        try
        {
            using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder, disk, limits);
            store.Import();
            return false;
        }
        catch (StoreUnavailableException e)
        {
            Assert.Contains("No space left", e.Message, StringComparison.Ordinal);
            return true;
        }
    }

    /// <summary>A store with one file imported and another one waiting.</summary>
    private static TestNursery Prepared()
    {
        TestNursery nursery = new(TestNursery.Climate);
        nursery.Write("a.csv", First);
        nursery.Import();
        nursery.Write("b.csv", Second);
        return nursery;
    }
}
