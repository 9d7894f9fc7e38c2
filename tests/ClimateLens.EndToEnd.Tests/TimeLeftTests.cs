using ClimateLens.Cli.Output;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>The time left in the progress line of <c>run</c>.</summary>
public sealed class TimeLeftTests
{
    [Theory]
    [InlineData(2, 100, 60, "")] // too few to know the pace
    [InlineData(50, 100, 2, "")]
    [InlineData(98, 100, 98, ", a few seconds left")]
    [InlineData(60, 100, 60, ", about 40 s left")]
    [InlineData(10, 100, 20, ", about 3 min left")]
    [InlineData(10, 1000, 36, ", about 59 min left")]
    [InlineData(520, 5200, 480, ", about 1 h 10 min left")]
    [InlineData(10, 1000, 39.8, ", about 1 h 10 min left")] // 65.7 min
    [InlineData(10, 1000, 72.6, ", about 2 h 0 min left")] // 119.8 min
    public void Words_DoneSoFar_TellTheRestAtThatPace(int done, int total, double seconds, string expected)
        => Assert.Equal(expected, TimeLeft.Words(done, total, TimeSpan.FromSeconds(seconds)));

    [Fact]
    public void Of_FirstPage_TellsHowMany() => Assert.Equal(" (1 of 20)", new TimeLeft(20).Of(1, 0));
}
