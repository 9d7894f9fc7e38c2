using System.Globalization;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>
/// Kills <c>run</c> at random moments; the next run must end with the site, byte for byte, of one that nobody disturbed.
/// Ten kills; CLIMATELENS_RUN_KILLS asks for more.
/// </summary>
public sealed class KilledRunTests
{
    private const int Seed = 20252;
    private const int InARow = 5;

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

            for (int again = 0; again < InARow && killed < Kills && KilledProgram.KillAfter(whole * (0.4 + (0.6 * random.NextDouble())), "run", nursery.NurseryFile); again++)
            {
                killed++;
                writing += Directory.Exists(nursery.PathOf("site/house-1")) ? 1 : 0;
            }

            ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile);
            Assert.True(run.ExitCode == 0, run.ToString());
            Dictionary<string, byte[]> left = Site(nursery);
            Assert.Equal(undisturbed.Keys.Order(StringComparer.Ordinal), left.Keys.Order(StringComparer.Ordinal));
            Assert.All(left, file => Assert.True(file.Value.AsSpan().SequenceEqual(undisturbed[file.Key]), $"{file.Key} after {killed} kills, round {round}"));
        }

        Assert.True(writing > Kills / 20, $"only {writing} of {killed} kills fell into the time of publishing");
    }

    private static Dictionary<string, byte[]> Site(SmallNursery nursery)
    {
        string site = nursery.PathOf("site");
        return Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(site, path), File.ReadAllBytes);
    }
}
