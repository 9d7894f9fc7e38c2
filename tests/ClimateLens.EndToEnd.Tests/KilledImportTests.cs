using System.Globalization;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>
/// Kills the program (SIGKILL on Unix) at random moments of an import, up to ten runs in a row, a hundred times in all; the next
/// import must end with the store, byte for byte, of one that nobody disturbed. CLIMATELENS_KILLS asks for more.
/// </summary>
public sealed class KilledImportTests
{
    private const int Seed = 20251;
    private const int InARow = 10;

    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("CLIMATELENS_KILLS") ?? "100", CultureInfo.InvariantCulture);

    [Fact]
    public void KilledAtAnyMoment_TheNextImportEndsWithTheStoreOfAnUndisturbedOne()
    {
        using SmallNursery nursery = Nursery();
        nursery.Write("exports/house.csv", SmallNursery.Week(new DateTime(2025, 11, 1), 60));
        Import(nursery);
        Dictionary<string, byte[]> before = Store(nursery);
        nursery.Write("exports/later.csv", Later());
        TimeSpan whole = KilledProgram.Processor("import", nursery.NurseryFile);
        Dictionary<string, byte[]> grown = Store(nursery);
        Put(nursery, []);
        Import(nursery);
        Dictionary<string, byte[]> atOnce = Store(nursery);
        Assert.True(grown.Keys.Except(before.Keys).Count() >= 3, "the second import must write several files");

        Random random = new(Seed);
        int killed = 0;
        int writing = 0;
        for (int round = 0; killed < Kills; round++)
        {
            Assert.True(round < Kills * 3, $"only {killed} runs were caught before their end");
            (Dictionary<string, byte[]> start, Dictionary<string, byte[]> end) = round % 3 == 0 ? ([], atOnce) : (before, grown);
            Put(nursery, start);
            for (int again = 0; again < InARow && KilledProgram.KillAfter(whole * (0.3 + (0.7 * random.NextDouble())), "import", nursery.NurseryFile); again++)
            {
                killed++;
                writing += Store(nursery).Keys.Except(start.Keys).Any() ? 1 : 0;
            }

            Import(nursery);
            Dictionary<string, byte[]> left = Store(nursery);
            Assert.Equal(end.Keys.Order(StringComparer.Ordinal), left.Keys.Order(StringComparer.Ordinal));
            Assert.All(left, file => Assert.True(file.Value.AsSpan().SequenceEqual(end[file.Key]), $"{file.Key} after {killed} kills, round {round}"));
        }

        Assert.True(writing > Kills / 20, $"only {writing} of {killed} kills fell into the time of writing");
    }

    private static SmallNursery Nursery()
    {
        SmallNursery nursery = new();
        nursery.Write("nursery.toml", SmallNursery.File().Replace("exports/house.csv", "exports/*.csv", StringComparison.Ordinal));
        return nursery;
    }

    /// <summary>Readings that overlap the first file with other values, go over New Year and hold rows that cannot be read.</summary>
    private static string Later()
        => SmallNursery.Week(new DateTime(2025, 12, 20), 30).Replace("2025-12-21 00:00,", "2025-12-21 25:00,", StringComparison.Ordinal).Replace(",18.00,", ",18.25,", StringComparison.Ordinal);

    private static void Import(SmallNursery nursery)
    {
        ProgramRun run = ClimateLensProgram.Run("import", nursery.NurseryFile);
        Assert.True(run.ExitCode is 0 or 1, run.ToString());
    }

    private static Dictionary<string, byte[]> Store(SmallNursery nursery)
    {
        string store = nursery.PathOf("store");
        return Directory.EnumerateFiles(store, "*", SearchOption.AllDirectories).Where(path => !path.EndsWith(".lock", StringComparison.Ordinal))
            .ToDictionary(path => Path.GetRelativePath(store, path), File.ReadAllBytes);
    }

    private static void Put(SmallNursery nursery, Dictionary<string, byte[]> files)
    {
        Directory.Delete(nursery.PathOf("store"), recursive: true);
        Directory.CreateDirectory(nursery.PathOf("store"));
        foreach ((string path, byte[] bytes) in files)
        {
            string full = nursery.PathOf(Path.Combine("store", path));
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            File.WriteAllBytes(full, bytes);
        }
    }
}
