using System.Globalization;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>
/// Kills <c>run</c> at random moments, every other time while it writes pages; the next run must end with the site, byte for byte, of one that nobody disturbed.
/// Ten kills; CLIMATELENS_RUN_KILLS asks for more.
/// </summary>
public sealed class KilledRunTests
{
    private const int Seed = 20252;
    private const int InARow = 5;
    private static readonly TimeSpan Writing = TimeSpan.FromMilliseconds(40); // less than a page takes

    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("CLIMATELENS_RUN_KILLS") ?? "10", CultureInfo.InvariantCulture);

    [Fact]
    public void KilledAtAnyMoment_TheNextRunEndsWithTheSiteOfAnUndisturbedOne()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 10, 13), 14));
        TimeSpan whole = KilledProgram.Processor("run", nursery.NurseryFile);
        Dictionary<string, byte[]> undisturbed = Site(nursery);
        Random random = new(Seed);
        int killed = 0, writing = 0;
        for (int round = 0; killed < Kills; round++)
        {
            Assert.True(round < Kills * 3, $"only {killed} runs were caught before their end");
            Directory.Delete(nursery.PathOf("site"), recursive: true);
            if (round % 4 == 0)
            {
                Directory.Delete(nursery.PathOf("store"), recursive: true);
            }

            DateTime begun = DateTime.UtcNow;
            for (int again = 0; again < InARow && killed < Kills && Kill(again, random.NextDouble(), begun); again++)
            {
                killed++;
                writing += IsWriting(nursery, begun) ? 1 : 0;
                begun = DateTime.UtcNow;
            }

            ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile);
            Assert.True(run.ExitCode == 0, run.ToString());
            Dictionary<string, byte[]> left = Site(nursery);
            Assert.Equal(undisturbed.Keys.Order(StringComparer.Ordinal), left.Keys.Order(StringComparer.Ordinal));
            Assert.All(left, file => Assert.True(file.Value.AsSpan().SequenceEqual(undisturbed[file.Key]), $"{file.Key} after {killed} kills, round {round}"));
        }

        Assert.True(writing >= Math.Max(1, Kills / 10), $"only {writing} of {killed} kills left a page or the index half written");

        bool Kill(int again, double chance, DateTime begun) => again % 2 == 0
            ? KilledProgram.KillAfter(() => IsWriting(nursery, begun), Writing * chance, "run", nursery.NurseryFile)
            : KilledProgram.KillAfter(whole * chance, "run", nursery.NurseryFile);
    }

    /// <summary>Whether files of a page, or of the whole site, that a run since then wrote lie beside their places.</summary>
    private static bool IsWriting(SmallNursery nursery, DateTime since)
    {
        DirectoryInfo staging = new(nursery.PathOf("site/.staging"));
        try
        {
            return staging.Exists && staging.EnumerateDirectories().Any(d => d.LastWriteTimeUtc >= since);
        }
        catch (DirectoryNotFoundException)
        {
            return false; // gone in between
        }
    }

    private static Dictionary<string, byte[]> Site(SmallNursery nursery)
    {
        string site = nursery.PathOf("site");
        return Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(site, path), File.ReadAllBytes);
    }
}
