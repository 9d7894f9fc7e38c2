using ClimateLens.Science.Infection;
using CsCheck;

namespace ClimateLens.Science.Tests.Infection;

public class MagareyPathogenTests
{
    private static readonly MagareyPathogen Any = new(1, 20, 30, 6, 21.8);

    [Fact]
    public void RequiredHours_AnyTemperature_LieBetweenTheLimits() => Gen.Double[-20, 50].Sample(t =>
        Any.RequiredHours(new(t)) is var hours && (double.IsPositiveInfinity(hours) ? t <= 1 || t >= 30 : hours is >= 6 and <= 21.8));

    [Fact]
    public void Response_AnyTemperature_IsHighestAtTheBest() => Gen.Double[-20, 50].Sample(t => Any.Response(new(t)) is >= 0 and <= 1);

    [Fact]
    public void Of_PeriodAtTheBestTemperature_IsMetFromTheLeastHours()
    {
        Assert.Equal(new MagareyScore(6, 1, true), Any.Of(new WetPeriod(0, 6, 6, 20, 0, false)));
        Assert.False(Any.Of(new WetPeriod(0, 6, 5.9, 20, 0, false)).Met);
        Assert.Equal(new MagareyScore(double.PositiveInfinity, 0, false), Any.Of(new WetPeriod(0, 40, 40, 31, 0, false)));
    }

    [Fact]
    public void Of_UnknownTemperature_IsNotMet()
    {
        MagareyScore score = Any.Of(new WetPeriod(0, 40, 40, double.NaN, 0, false));
        Assert.True(double.IsNaN(score.RequiredHours) && double.IsNaN(score.Share) && !score.Met);
    }

    [Theory]
    [InlineData(20, 20, 30, 6, 20)]
    [InlineData(1, 30, 30, 6, 20)]
    [InlineData(1, 20, 30, 0, 20)]
    [InlineData(1, 20, 30, 6, 5)]
    [InlineData(double.NaN, 20, 30, 6, 20)]
    public void Response_ImpossiblePathogen_Throws(double low, double best, double high, double least, double most) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new MagareyPathogen(low, best, high, least, most).Response(new(20)));
}
