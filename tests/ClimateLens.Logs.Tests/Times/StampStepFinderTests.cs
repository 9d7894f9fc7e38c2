using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>Where the step of stamps is the most frequent distance and where the mean; five-minute rows that are moved by so many seconds.</summary>
public sealed class StampStepFinderTests
{
    private const long Second = 1_000_000, Step = 300 * Second;

    [Fact]
    public void Find_StretchesApart_DoNotCountBetween()
    {
        var finder = new StepFinder();
        foreach (int first in Enumerable.Range(0, 3))
        {
            long[] stretch = [first * 100 * Step, ((first * 100) + 1) * Step];
            finder.Add(stretch);
        }

        Assert.Equal(new NominalStep(300, 1, 0), finder.Find());
    }

    [Fact]
    public void Find_Share_IsToTheSecond()
    {
        // 8 distances of 300 s, 1 of 301 s, 1 of 299.5 s: the last is 300 s to the second.
        long[] seconds = [.. Enumerable.Range(0, 9).Select(i => i * Step)];
        Assert.Equal(new NominalStep(300, 0.9, 0), Find([.. seconds, seconds[^1] + Step + Second, seconds[^1] + Step + Second + Step - (Second / 2)]));
    }

    [Fact]
    public void Find_StrayOfLessThanASecond_IsNone()
    {
        // No distance comes often, yet each is five minutes to the second.
        NominalStep step = Find([.. Enumerable.Range(0, 200).Select(i => (i * Step) + (i * 13 % 41 * 10_000L))]);
        Assert.Equal(new NominalStep(300, 1, 0), step);
        Assert.False(step.Strays);
    }

    [Fact]
    public void Find_FarOutStamps_AreNoStray()
    {
        // One in fifty comes two minutes late, the others stray by up to 20 s.
        NominalStep step = Find([.. Enumerable.Range(0, 500).Select(i => (i * Step) + (i % 50 == 25 ? 120 : (i * 13 % 41) - 20) * Second)]);
        Assert.Equal(300, step.Seconds);
        Assert.InRange(step.StraySeconds, 18, 30);
    }

    [Theory]
    [InlineData(5, true)] // one of twenty
    [InlineData(6, false)]
    public void Find_TooManyFarOutStamps_KeepNoStep(int late, bool strays)
    {
        // 100 stamps; so many come two minutes late, the others stray by up to 15 s about their own places. All blocks of rows are alike on both sides.
        HashSet<int> far = [.. Enumerable.Range(0, late).Select(i => 8 + (i * 16))];
        Assert.Equal(strays, Find([.. Enumerable.Range(0, 100).Select(i => (i * Step) + (far.Contains(i) ? 120 : (i * 13 % 31) - 15) * Second)]).Strays);
    }

    [Fact]
    public void Find_FullBlocks_AreLookedAtToTheirEnd()
    {
        NominalStep step = Find([.. Enumerable.Range(0, 128).Select(i => (i * Step) + ((i * 13 % 41) - 20) * Second)]);
        Assert.Equal(300, step.Seconds);
        Assert.InRange(step.StraySeconds, 18, 25);
    }

    [Fact]
    public void Find_TooManyGaps_TakesTheMostFrequent()
    {
        // Six distances of ten are about 300 s, four are gaps of half an hour: too few to tell how far stamps stray.
        long at = 0;
        var stamps = new List<long>();
        for (int i = 0; i < 200; i++)
        {
            stamps.Add(at + (i % 10 is 1 or 3 ? 2 * Second : 0));
            at += i % 10 < 6 ? Step : 6 * Step;
        }

        NominalStep step = Find([.. stamps]);
        Assert.Equal(0, step.StraySeconds);
        Assert.Equal(1800, step.Seconds); // 4 in 10; 300, 302 and 298 s share the other six
    }

    private static NominalStep Find(long[] stamps)
    {
        var finder = new StepFinder();
        finder.Add(stamps);
        return finder.Find()!.Value;
    }
}
