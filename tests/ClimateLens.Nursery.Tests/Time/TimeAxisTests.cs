using ClimateLens.Nursery.Time;
using CsCheck;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Time;

public class TimeAxisTests
{
    private static readonly Instant Start = Instant.FromUtc(2025, 10, 12, 23, 0);
    private static readonly TimeAxis Axis = new(Start, Duration.FromMinutes(5), 2016, DateTimeZone.Utc);

    [Theory]
    [InlineData(-1, -1)] // one tick before
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(3_000_000_000 - 1, 0)] // one tick before the second step
    [InlineData(3_000_000_000, 1)]
    [InlineData((2016L * 3_000_000_000) - 1, 2015)]
    [InlineData(2016L * 3_000_000_000, 2016)] // the end is outside
    [InlineData(5000L * 3_000_000_000, 2016)]
    [InlineData(-5000L * 3_000_000_000, -1)]
    public void Index_AtTheEdgesOfSteps_IsTheStepThatHoldsIt(long ticks, int expected)
        => Assert.Equal(expected, Axis.IndexOf(Start + Duration.FromTicks(ticks)));

    [Fact]
    public void Index_OfAnyInstantInside_IsTheStepAroundIt()
        => Gen.Select(Gen.Long[0, (7L * 24 * 3600 * 10_000_000) - 1], Gen.Int[0, 4]).Sample((ticks, which) =>
        {
            int minutes = ((int[])[1, 5, 10, 15, 60])[which];
            TimeAxis axis = new(Start, Duration.FromMinutes(minutes), 7 * 24 * 60 / minutes, DateTimeZone.Utc);
            Instant instant = Start + Duration.FromTicks(ticks);
            int index = axis.IndexOf(instant);
            return axis.StartOf(index) <= instant && instant < axis.StartOf(index + 1);
        });

    [Fact]
    public void Index_BeforeTheStart_IsAlwaysBelowZero()
        => Gen.Long[1, long.MaxValue / 100_000].Sample(ticks => Axis.IndexOf(Start - Duration.FromTicks(ticks)) == -1);

    [Fact]
    public void Index_AtTheEndsOfTime_StaysOutside()
    {
        Assert.Equal(-1, Axis.IndexOf(Instant.MinValue));
        Assert.Equal(2016, Axis.IndexOf(Instant.MaxValue));
    }

    [Fact]
    public void Axis_WithoutSteps_EndsWhereItStarts()
    {
        TimeAxis empty = Axis with { Count = 0 };
        Assert.Equal(Start, empty.End);
        Assert.Equal(0, empty.IndexOf(Start));
        Assert.Equal(-1, empty.IndexOf(Start - Duration.Epsilon));
    }

    [Fact]
    public void Axis_OfAWeek_EndsAfterItsLastStep()
    {
        Assert.Equal(Start + Duration.FromDays(7), Axis.End);
        Assert.Equal(Axis.End, Axis.StartOf(Axis.Count));
    }
}
