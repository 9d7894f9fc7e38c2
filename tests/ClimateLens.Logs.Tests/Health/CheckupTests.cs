using System.Collections.Immutable;
using ClimateLens.Logs.Health;
using ClimateLens.Logs.Store;
using NodaTime;

namespace ClimateLens.Logs.Tests.Health;

/// <summary>Each thing that the checkup tells, and a near miss that it does not.</summary>
public sealed class CheckupTests
{
    // House 1 ends on 1 July 2025 at 10:05 local, 09:05 UTC; the nursery has a house 2 without any export.
    private const string Rows = "time,temp,rh\n2025-07-01T10:00,20,80\n2025-07-01T10:05,20,80\n";
    private static readonly Instant Newest = Instant.FromUtc(2025, 7, 1, 9, 5);
    private static readonly string TwoHouses = TestNursery.Climate + "\n" + TestNursery.Climate.Replace("house = \"1\"", "house = \"2\"", StringComparison.Ordinal);

    [Fact]
    public void Checkup_FreshNursery_IsFineThroughout()
    {
        using TestNursery nursery = Imported();
        Assert.Empty(Look(nursery, Newest + Duration.FromHours(1)));
    }

    [Theory]
    [InlineData(71, 3, false)]
    [InlineData(72, 3, true)]
    [InlineData(190, 8, false)]
    [InlineData(192, 8, true)]
    public void Checkup_SilentHouse_IsNamedOnceTheDaysArePast(int hours, int staleDays, bool told)
    {
        using TestNursery nursery = Imported();
        string[] texts = [.. Look(nursery, Newest + Duration.FromHours(hours), staleDays: staleDays).Where(l => l.Code == "data.stale").Select(l => l.Text)];
        Assert.Equal(told ? [$"House 1 has sent nothing for {hours / 24} days: its newest reading is of 2025-07-01 10:05.", $"House 2 has sent nothing for {hours / 24} days: its newest reading is of 2025-07-01 10:05."] : [], texts);
    }

    [Fact]
    public void Checkup_OneSourceThatEndedEarly_IsNamed_TheHouseIsNot()
    {
        string canopy = TestNursery.Climate.Replace("\"climate\"", "\"canopy\"", StringComparison.Ordinal).Replace("*.csv", "*.txt", StringComparison.Ordinal);
        using TestNursery nursery = Imported(TwoHouses + "\n" + canopy, n => n.Write("c.txt", "time,temp,rh\n2025-06-20T10:05,20,80\n"));
        CheckupLine line = Assert.Single(Look(nursery, Newest));
        Assert.Equal(("data.source", "House 1: the source \"canopy\" ends 2025-06-20 10:05, 11 days before the newest reading."), (line.Code, line.Text));
    }

    [Fact]
    public void Checkup_HouseWithoutReadings_IsNamed()
    {
        using TestNursery nursery = Imported(TestNursery.Climate);
        Assert.Equal(("data.none", "House 2 has no readings in the store."), Codes(Assert.Single(Look(nursery, Newest))));
    }

    [Theory]
    [InlineData(-60, false)] // an hour of summer time
    [InlineData(-75, true)]
    public void Checkup_ClockBeforeTheNewestReading_IsTold(int minutes, bool told)
    {
        using TestNursery nursery = Imported();
        Assert.Equal(told, Look(nursery, Newest + Duration.FromMinutes(minutes)).Any(l => l.Code == "clock" && l.Text.Contains("before the newest reading of House", StringComparison.Ordinal)));
    }

    [Fact]
    public void Checkup_ClockFarBehind_IsTold_AndOldZonesAreTold()
    {
        using TestNursery nursery = Imported();
        Assert.Contains("far behind", Look(nursery, Instant.FromUtc(1970, 1, 1, 0, 0)).Single(l => l.Code == "clock").Text, StringComparison.Ordinal);
        Assert.Contains(Look(nursery, Instant.FromUtc(2029, 1, 1, 0, 0)), l => l.Code == "zones.version");
        Assert.DoesNotContain(Look(nursery, Instant.FromUtc(2028, 12, 31, 0, 0)), l => l.Code == "zones.version");
    }

    [Theory]
    [InlineData(300_000_000L, false)]
    [InlineData(100_000_000L, true)]
    [InlineData(null, false)]
    public void Checkup_FullDisk_IsTold_UnknownRoomIsNot(long? free, bool told)
    {
        using TestNursery nursery = Imported();
        Assert.Equal(told ? ["store.room", "site.room"] : [], Look(nursery, Newest, free).Select(l => l.Code));
    }

    [Fact]
    public void Checkup_StoreThatIsAFile_IsTold()
    {
        using var nursery = new TestNursery(TwoHouses);
        nursery.Write("a.csv", Rows);
        nursery.Write("store", "");
        Assert.Contains(Look(nursery, Newest), l => l.Code == "store.writable");
    }

    [Fact]
    public void Checkup_NothingImported_IsTold_AndMakesNoStore()
    {
        using var nursery = new TestNursery(TwoHouses);
        nursery.Write("a.csv", Rows);
        Assert.Equal(["store.ledger", "data.none", "data.none"], Look(nursery, Newest).Select(l => l.Code));
        Assert.False(Directory.Exists(nursery.Store));
    }

    [Fact]
    public void Checkup_DamagedLedger_IsTold()
    {
        using TestNursery nursery = Imported();
        File.WriteAllText(Path.Combine(nursery.Store, "ledger.json"), "{");
        Assert.Contains(Look(nursery, Newest), l => l.Code == "store.ledger" && l.Text.Contains("damaged", StringComparison.Ordinal));
    }

    [Fact]
    public void Checkup_PartWithOneOtherByte_IsTold_AndMendedAsItSays()
    {
        using TestNursery nursery = Imported();
        Assert.StartsWith("2 parts of the store are as written", All(nursery, Newest).Single(l => l.Code == "store.parts").Text, StringComparison.Ordinal);
        SortedDictionary<string, string> whole = nursery.StoreFiles();
        string part = Directory.GetFiles(nursery.Store, "*.parquet", SearchOption.AllDirectories).Order(StringComparer.Ordinal).First();
        byte[] bytes = File.ReadAllBytes(part);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(part, bytes);
        CheckupLine line = Assert.Single(Look(nursery, Newest));
        Assert.Equal("store.parts", line.Code);
        Assert.Contains(Path.GetRelativePath(nursery.Store, part).Replace('\\', '/'), line.Text, StringComparison.Ordinal);

        File.Delete(part);
        Assert.Equal("store.parts", Assert.Single(Look(nursery, Newest)).Code);
        nursery.Import();
        Assert.Empty(Look(nursery, Newest));
        Assert.Equal(whole, nursery.StoreFiles());
    }

    [Fact]
    public void Parts_ReplacedMeanwhile_AreNoFault()
    {
        using TestNursery nursery = Imported();
        StoredFile old = new("readings/gone.parquet", 3, "00");
        Ledger before = new() { Sources = [new LedgerSource { House = "1", Source = "climate", Settings = "", Parts = [new LedgerPart(old, "1", 2025, 1, 0, 0)] }] };
        Assert.True(Assert.Single(PartsCheck.Of(nursery.Store, before, () => new Ledger())).IsFine);
        Assert.False(Assert.Single(PartsCheck.Of(nursery.Store, before, () => before)).IsFine);
        Assert.Empty(PartsCheck.Of(nursery.Store, new Ledger(), () => null));
    }

    [Fact]
    public void Checkup_HeldStore_SaysSo_AndAnUnfinishedFileAfterwards()
    {
        using TestNursery nursery = Imported();
        using (ReadingStore held = ReadingStore.Open(nursery.Settings, nursery.Folder))
        {
            Assert.Contains("Another run holds", All(nursery, Newest).Single(l => l.Code == "store.lock").Text, StringComparison.Ordinal);
        }

        Assert.Equal("No run holds the store.", All(nursery, Newest).Single(l => l.Code == "store.lock").Text);
        File.WriteAllText(Path.Combine(nursery.Store, "ledger.json.new"), "");
        Assert.Contains("left 1 unfinished file", All(nursery, Newest).Single(l => l.Code == "store.lock").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(4, false)]
    [InlineData(5, true)]
    public void Checkup_NewestFileWithMoreSetAside_IsTold(int bad, bool told)
    {
        using TestNursery nursery = Imported();
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:10,20,80\n" + string.Concat(Enumerable.Repeat("nonsense,20,80\n", bad)));
        nursery.Import();
        CheckupLine line = All(nursery, Newest).First(l => l.Code == "setAside.growth");
        Assert.Equal(!told, line.IsFine);
        Assert.StartsWith($"House 1, export \"climate\": {bad} of {bad + 1} rows of b.csv are set aside (", line.Text, StringComparison.Ordinal);
        Assert.EndsWith("; of the files before it, 0.0 %.", line.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Checkup_ShareThatWasAlwaysSo_IsNoGrowth()
    {
        const string Half = "x,1,2\nx,1,2\nx,1,2\nx,1,2\nx,1,2\nx,1,2\n";
        using TestNursery nursery = Imported(TwoHouses, n => n.Write("a.csv", Rows + Half));
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:10,20,80\n2025-07-01T10:15,20,80\n" + Half);
        nursery.Import();
        Assert.True(All(nursery, Newest).First(l => l.Code == "setAside.growth").IsFine);
    }

    [Fact]
    public void Checkup_ExportWithoutFile_IsTold_ForPatternAndName()
    {
        string more = TestNursery.Climate.Replace("\"climate\"", "\"canopy\"", StringComparison.Ordinal).Replace("\"*.csv\"", "\"c/*.csv\", \"gone.csv\"", StringComparison.Ordinal);
        using TestNursery nursery = Imported(TwoHouses + "\n" + more);
        string[] texts = [.. Look(nursery, Newest).Where(l => l.Code == "export.files").Select(l => l.Text)];
        Assert.Equal(2, texts.Length);
        Assert.Contains("gone.csv", texts[0], StringComparison.Ordinal);
        Assert.Contains("c/*.csv", texts[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Checkup_ChangesNothing()
    {
        using TestNursery nursery = Imported();
        SortedDictionary<string, string> before = nursery.StoreFiles();
        _ = All(nursery, Newest);
        Assert.Equal(before, nursery.StoreFiles());
        Assert.False(Directory.Exists(Path.Combine(nursery.Folder, "site")));
        Assert.DoesNotContain(Directory.GetFiles(nursery.Folder), f => f.Contains("probe", StringComparison.Ordinal));
    }

    private static TestNursery Imported(string? exports = null, Action<TestNursery>? more = null)
    {
        var nursery = new TestNursery(exports ?? TwoHouses);
        nursery.Write("a.csv", Rows);
        more?.Invoke(nursery);
        nursery.Import();
        return nursery;
    }

    private static (string, string) Codes(CheckupLine line) => (line.Code, line.Text);

    private static ImmutableArray<CheckupLine> All(TestNursery nursery, Instant now, long? free = 1_000_000_000, int staleDays = Checkup.UsualStaleDays)
        => Checkup.Of(nursery.Settings, nursery.Folder, Path.Combine(nursery.Folder, nursery.Settings.Site), new Machine(now, _ => free, "2025b"), staleDays);

    private static CheckupLine[] Look(TestNursery nursery, Instant now, long? free = 1_000_000_000, int staleDays = Checkup.UsualStaleDays)
        => [.. All(nursery, now, free, staleDays).Where(l => !l.IsFine)];
}
