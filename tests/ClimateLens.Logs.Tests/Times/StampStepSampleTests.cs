using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>The step of a file from stamps in any order, and the counts it is found by; seconds.</summary>
public sealed class StampStepSampleTests
{
    private const long Second = 1_000_000;

    [Theory]
    [InlineData(new[] { 0, 600, 1200, 1800 })]
    [InlineData(new[] { 1800, 1200, 600, 0 })] // newest first
    [InlineData(new[] { 0, 600, 1800, 1200 })] // a late row
    [InlineData(new[] { 0, 1200, 600 })]
    [InlineData(new[] { 0, 0, 600, 600, 1200, 1200 })] // long tables
    [InlineData(new[] { 0, 600, 1200, 0, 600, 1200 })]
    [InlineData(new[] { 1200, 600, 0, 1200, 600, 0 })]
    public void Find_RowsInAnyOrder_IsTheStepOfTheStamps(int[] seconds) => Assert.Equal(new NominalStep(600, 1, 0), Sample(seconds).Find());

    [Theory]
    [InlineData(new int[0])]
    [InlineData(new[] { 600 })]
    [InlineData(new[] { 600, 600 })]
    public void Find_FewerThanTwoStamps_IsNotKnown(int[] seconds) => Assert.Null(Sample(seconds).Find());

    [Fact]
    public void Find_OnlySoManyStampsAreKept_TheFirstTell()
    {
        var sample = new StepSample();
        for (int i = 0; i < 131_072; i++)
        {
            sample.Add(i * 60 * Second);
        }

        sample.Add(100_000_000 * Second);
        Assert.Equal(1, sample.Find()!.Value.Share); // the far one is not among them
    }

    [Fact]
    public void Votes_StretchesApart_DoNotCountBetween()
    {
        StepVotes votes = Votes(0, 600, 1200, null, 90_000, 90_600);
        Assert.Equal(3, votes.Count);
        Assert.Equal(new KeyValuePair<long, int>(600 * Second, 3), Assert.Single(votes.Votes));
    }

    [Theory]
    [InlineData(new[] { 0, 900, 1500, 2400, 3000 }, 600, 2)] // 900, 600, 900, 600: the shorter of two alike
    [InlineData(new[] { 0, 600, 1500, 2100, 3000 }, 600, 2)]
    [InlineData(new[] { 0, 300, 1200, 2100 }, 900, 2)]
    public void Common_IsTheMostFrequentAndThenTheShortest(int[] seconds, int step, int times) => Assert.Equal((step * Second, times), Votes([.. seconds.Select(s => (int?)s)]).Common);

    [Theory]
    [InlineData(new[] { 0, 600, 1200, 1800, 3000 }, 600)] // three of four
    [InlineData(new[] { 0, 600, 1200, 1800 }, 600)]
    [InlineData(new[] { 0, 600, 1200, 2400 }, null)] // two of three
    [InlineData(new[] { 0, 600, 1200, 1800, 2400, 3000, 4200, 5400 }, null)] // five of seven
    [InlineData(new[] { 0 }, null)]
    public void Clear_TakesThreeOfFour(int[] seconds, int? step) => Assert.Equal(step * Second, Votes([.. seconds.Select(s => (int?)s)]).Clear);

    [Theory]
    [InlineData(300, 0.51, 60, "a step of 5 min; stamps stray by up to 60 s, and 51 % are 5 min apart")]
    [InlineData(90, 0.25, 7.25, "a step of 90 s; stamps stray by up to 7.3 s, and 25 % are 90 s apart")]
    [InlineData(45, 1, 0.5, "a step of 45 s; stamps stray by up to 0.5 s, and 100 % are 45 s apart")]
    public void ToString_SaysTheStepInWholeMinutesOrSeconds(int seconds, double share, double stray, string text) => Assert.Equal(text, new NominalStep(seconds, share, stray).ToString());

    private static StepSample Sample(int[] seconds)
    {
        var sample = new StepSample();
        foreach (int second in seconds)
        {
            sample.Add(second * Second);
        }

        return sample;
    }

    /// <summary>Votes of stamps; null where those before end.</summary>
    private static StepVotes Votes(params int?[] seconds)
    {
        var votes = new StepVotes();
        foreach (int? second in seconds)
        {
            if (second is int s)
            {
                votes.Add(s * Second);
            }
            else
            {
                votes.Break();
            }
        }

        return votes;
    }
}
