using ClimateLens.Logs.Times;
using CsCheck;

namespace ClimateLens.Logs.Tests;

public sealed class StepFinderTests
{
    private const long Second = 1_000_000;

    [Theory]
    [InlineData(new[] { 0, 4, 9, 15 })]
    [InlineData(new[] { 0, 5, 9, 14, 20, 24, 30, 34, 40, 45, 49, 54 })]
    public void Find_FiveMinutesCutToWholeMinutes_IsFiveMinutes(int[] minutes)
    {
        NominalStep step = Find([.. Enumerable.Range(0, 200).SelectMany(hour => minutes.Select(m => ((hour * (minutes.Length == 4 ? 20 : 60)) + m) * 60 * Second))]);
        Assert.Equal(300, step.Seconds);
        Assert.True(step.Strays);
        Assert.InRange(step.StraySeconds, 20, 60);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(300)]
    [InlineData(420)]
    [InlineData(3600)]
    public void Find_StampsThatJitter_IsTheStepTheyJitterAround(int seconds)
    {
        Gen.Int[0, int.MaxValue].Sample(seed =>
        {
            var random = new Random(seed);
            long[] stamps = [.. Enumerable.Range(0, 500).Select(i => ((long)i * seconds * Second) + (long)((random.NextDouble() - 0.5) * seconds * Second / 5))];
            NominalStep step = Find(stamps);
            return step.Seconds == seconds && step.StraySeconds > 0 && step.StraySeconds <= seconds * 0.25;
        }, iter: 50);
    }

    [Fact]
    public void Find_RegularWithGaps_DoesNotStray()
    {
        NominalStep step = Find([.. Enumerable.Range(0, 1000).Where(i => i % 9 > 1).Select(i => i * 600 * Second)]);
        Assert.Equal(600, step.Seconds);
        Assert.False(step.Strays);
        Assert.InRange(step.Share, 0.8, 0.9);
    }

    [Fact]
    public void Find_HalfHoursWithExtraRows_StaysWithTheMostFrequent()
    {
        NominalStep step = Find([.. Enumerable.Range(0, 200).SelectMany(i => i % 2 == 0 ? new[] { i * 1800L, (i * 1800L) + 900 } : [i * 1800L]).Select(s => s * Second)]);
        Assert.Equal(900, step.Seconds); // 2 of 3 distances
        Assert.False(step.Strays);
        Assert.Equal(1800, Find([.. Enumerable.Range(0, 200).SelectMany(i => i % 4 == 0 ? new[] { i * 1800L, (i * 1800L) + 900 } : [i * 1800L]).Select(s => s * Second)]).Seconds);
    }

    [Fact]
    public void Find_ClockThatRunsSlow_KeepsItsOwnStep()
    {
        NominalStep step = Find([.. Enumerable.Range(0, 1000).Select(i => i * 297 * Second)]);
        Assert.Equal((297, false), (step.Seconds, step.Strays));
    }

    [Fact]
    public void Find_TwoAndAHalfMinutesCutToMinutes_IsTheMean()
        => Assert.Equal(150, Find([.. Enumerable.Range(0, 1000).Select(i => i * 5 / 2 * 60L * Second)]).Seconds);

    [Fact]
    public void Find_OneStamp_IsNotKnown() => Assert.Null(new StepFinder().Find());

    private static NominalStep Find(long[] stamps)
    {
        var finder = new StepFinder();
        finder.Add(stamps);
        return finder.Find()!.Value;
    }
}
