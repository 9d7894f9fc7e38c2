using System.Globalization;
using ClimateLens.Nursery;
using CsCheck;

namespace ClimateLens.Logs.Tests.Fuzzing;

/// <summary>
/// Whatever stands in a file, reading it ends, keeps its books and needs memory in proportion to the file. Bounded here;
/// CLIMATELENS_FUZZ_CASES sets more for a night by hand. A failing case prints its seed and shrinks.
/// </summary>
public sealed class ReaderFuzzTests
{
    // Buffers of reader and writer, whatever the file; found by measuring sound files of a kilobyte.
    private const long OwnBytes = 48L << 20;

    // Each byte of text may become a reading of eight bytes that grows, is sorted and is written.
    private const long BytesOfMemoryPerByte = 400;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    private static long Cases => long.TryParse(Environment.GetEnvironmentVariable("CLIMATELENS_FUZZ_CASES"), CultureInfo.InvariantCulture, out long cases) ? cases : 60;

    public static TheoryData<int> Flavours => [.. Enumerable.Range(0, Flavour.All.Length)];

    [Theory]
    [MemberData(nameof(Flavours))]
    public async Task SoundFlavour_IsReadWithoutAProblem(int index)
    {
        Flavour flavour = Flavour.All[index];
        using var nursery = new TestNursery(flavour.Toml);
        nursery.Write(flavour.File, flavour.Bytes);
        ImportReport report = await Task.Run(nursery.Import);
        Assert.True(report.Problems.IsEmpty, $"{flavour.Name}: {string.Join('\n', report.Problems)}");
        Assert.True(report.Sheets.Single().Accepted > 20, flavour.Name);
    }

    [Theory]
    [MemberData(nameof(Flavours))]
    public async Task SpoiltFlavour_EndsAndKeepsItsBooks(int index)
    {
        Flavour flavour = Flavour.All[index];
        Task fuzz = Task.Run(() => ByteEdit.Some.Sample(edits => Verify(flavour, ByteEdit.Apply(flavour.Bytes, edits)), iter: Cases, threads: 1));
        await fuzz.WaitAsync(Longest + TimeSpan.FromMilliseconds(200 * Cases)); // a hang is a failure, not a wait
    }

    private static void Verify(Flavour flavour, byte[] bytes)
    {
        using var nursery = new TestNursery(flavour.Toml);
        nursery.Write(flavour.File, bytes);
        long before = GC.GetAllocatedBytesForCurrentThread();
        ImportReport report = nursery.Import();
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.InRange(allocated, 0, OwnBytes + (BytesOfMemoryPerByte * bytes.Length));
        foreach (ImportSheet sheet in report.Sheets)
        {
            Assert.Equal(sheet.RowsRead, sheet.Accepted + sheet.SetAside + sheet.Duplicates + sheet.Blank);
        }

        Assert.All(report.Problems, p => Assert.DoesNotContain(p.ToString(), c => char.IsControl(c)));
        var store = nursery.StoreFiles();
        nursery.Import();
        Assert.Equal(store, nursery.StoreFiles());
    }
}
