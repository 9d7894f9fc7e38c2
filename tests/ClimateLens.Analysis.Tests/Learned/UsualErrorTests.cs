using ClimateLens.Analysis.Learned;

namespace ClimateLens.Analysis.Tests.Learned;

public sealed class UsualErrorTests
{
    [Fact]
    public void DayLimit_IsSoManyRobustDeviations_AndNoLessThanTheAccuracy()
    {
        // Days 1 to 9: median 5, deviations 0 1 1 2 2 3 3 4 4, their median 2.
        double[] days = [3, 1, 9, 2, 8, 5, 4, 7, 6];
        DayError error = DayError.Of(days, 0);
        Assert.Equal(5, error.Middle);
        Assert.Equal(DayError.Times * 1.4826 * 2, error.Limit, 12);
        Assert.Equal((1.4, 8.6), (error.Low, error.High));
        Assert.Equal(30, DayError.Of(days, 30).Limit);
    }

    [Fact]
    public void DayLimit_OneWildDay_HardlyMovesIt()
        => Assert.True(DayError.Of([3, 1, 900, 2, 8, 5, 4, 7, 6], 0).Limit <= 1.5 * DayError.Of([3, 1, 9, 2, 8, 5, 4, 7, 6], 0).Limit);
}
