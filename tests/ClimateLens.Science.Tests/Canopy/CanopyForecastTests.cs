using ClimateLens.Science.Canopy;
using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Tests.Canopy;

/// <summary>A curve that is sure closes a bench on the day that the formulas give; an unsure one by as many draws as the forecast says.</summary>
public class CanopyForecastTests
{
    private static readonly DiameterGrowth Curve = new(40, 0.1, 25);
    private static readonly PlantSpacing Tight = PlantSpacing.Random(40), Wide = PlantSpacing.Random(25), Wider = PlantSpacing.Random(10);

    [Fact]
    public void Closure_OneSpacing_IsTheDayOfTheFormula()
    {
        ClosureForecast closure = Sure(new SpacingStep(0, Tight)).Closure(0, 200);
        Assert.Equal(DayClosed(40), closure.Day, 1e-3);
        Assert.Equal(DayClosed(40), closure.LowDay, 1e-3);
        Assert.Equal(DayClosed(40), closure.HighDay, 1e-3);
        Assert.Equal(1, closure.ShareReached);
    }

    [Fact]
    public void Closure_FirstSpacing_HoldsBeforeItsDayToo() => Assert.Equal(DayClosed(40), Sure(new SpacingStep(90, Tight)).Closure(0, 200).Day, 1e-3);

    [Fact]
    public void Closure_SpacedBeforeItCloses_IsTheDayOfTheNewSpacing()
        => Assert.Equal(DayClosed(25), Sure(new(0, Tight), new(DayClosed(40) - 1, Wide)).Closure(0, 200).Day, 1e-3);

    [Fact]
    public void Closure_SpacedAfterItClosed_IsTheDayOfTheOldSpacing()
        => Assert.Equal(DayClosed(40), Sure(new(0, Tight), new(DayClosed(40) + 1, Wide)).Closure(0, 200).Day, 1e-3);

    /// <summary>Wide enough for the closer spacing long before it is set: it closes as it is set.</summary>
    [Fact]
    public void Closure_SetCloserWhenWideEnough_IsTheDayOfTheMove()
        => Assert.Equal(55, Sure(new(0, Wider), new(55, Tight)).Closure(0, 200).Day);

    [Fact]
    public void Closure_ClosedOnTheFirstDay_IsThatDay()
    {
        double day = DayClosed(40) + 3;
        Assert.Equal(day, Sure(new SpacingStep(0, Tight)).Closure(day, 200).Day);
        Assert.Equal(day, Sure(new SpacingStep(0, Tight)).Closure(day, day).Day); // the first is the last
        Assert.Equal(day, Sure(new(0, Wider), new(10, Tight)).Closure(day, 200).Day); // and so under a later spacing
        Assert.False(Sure(new SpacingStep(0, Tight)).Closure(0, DayClosed(40) - 0.1).Reached);
    }

    /// <summary>From its day on a spacing holds, so on that day the old one closes nothing any more.</summary>
    [Fact]
    public void Closure_FirstDayIsTheDayOfAWiderSpacing_IsNotThatOfTheOldOne()
    {
        double day = DayClosed(40) + 3;
        ClosureForecast closure = Sure(new(0, Tight), new(day, Wider)).Closure(day, 200);
        Assert.False(closure.Reached);
        Assert.Equal(0, closure.ShareReached);
    }

    /// <summary>By the day that 5, 50 or 95 % of 400 draws have closed, 20, 200 or 380 have, and a moment earlier one less.</summary>
    [Fact]
    public void Closure_UnsureCurve_IsWhenThatManyDrawsHaveClosed()
    {
        var forecast = new CanopyForecast(GrowthFit.Of(GrowthPrior.Poinsettia, []), [new(0, PlantSpacing.Square(20))], 3);
        ClosureForecast closure = forecast.Closure(0, 400);
        Assert.Equal(Closed(forecast, 400) / 400.0, closure.ShareReached, 9);
        foreach ((double day, int draws) in new[] { (closure.LowDay, 20), (closure.Day, 200), (closure.HighDay, 380) })
        {
            Assert.Equal(draws - 1, Closed(forecast, day - 1e-4));
            Assert.Equal(draws, Closed(forecast, day + 1e-4));
        }
    }

    [Theory]
    [InlineData(-5, 40)] // before its day the first holds
    [InlineData(10, 40)]
    [InlineData(29.999, 40)]
    [InlineData(30, 25)]
    [InlineData(49, 25)]
    [InlineData(50, 10)]
    [InlineData(90, 10)]
    public void On_Day_IsTheCoverOfThatDaysSpacing(double day, double plantsPerM2)
    {
        CoverDay cover = Sure(new(10, Tight), new(30, Wide), new(50, Wider)).On(day);
        double width = 40 / (1 + Math.Exp(-0.1 * (day - 25))); // the logistic curve
        double expected = 1 - Math.Exp(-plantsPerM2 / 10_000 * Math.PI * width * width / 4); // discs without order [HALL88]
        Assert.Equal(expected, cover.Cover, 9);
        Assert.Equal(expected, cover.Low, 1e-5);
        Assert.Equal(expected, cover.High, 1e-5);
    }

    [Fact]
    public void Forecast_ImpossibleSpacing_ThrowsAtOnce()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Sure(new SpacingStep(0, new(SpacingPattern.Square, 0, 0))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sure(new(0, Tight), new(9, new(SpacingPattern.Rectangular, 30, 501))));
        Assert.Throws<ArgumentException>(() => Sure());
    }

    [Theory]
    [InlineData(double.NaN, 5)]
    [InlineData(double.NegativeInfinity, 5)]
    [InlineData(0, double.NaN)]
    [InlineData(0, double.PositiveInfinity)]
    [InlineData(5, 4)]
    public void Closure_ImpossibleDays_Throw(double first, double last)
        => Assert.Throws<ArgumentOutOfRangeException>(() => Sure(new SpacingStep(0, Tight)).Closure(first, last));

    /// <summary>Without order <c>1 - exp(-N π d²/4)</c> is 0.95 at <c>d = 2 √(ln 20/(π N))</c>; the logistic curve comes there at <c>t50 - ln(D/d - 1)/k</c>.</summary>
    private static double DayClosed(double plantsPerM2)
    {
        double width = 2 * Math.Sqrt(Math.Log(20) / (Math.PI * plantsPerM2 / 10_000));
        return 25 - (Math.Log((40 / width) - 1) / 0.1);
    }

    private static int Closed(CanopyForecast forecast, double day)
    {
        double[] covers = new double[CanopyForecast.Draws];
        forecast.CoversOn(day, covers);
        return covers.Count(cover => cover >= GroundCover.Closed);
    }

    /// <summary>A forecast whose draws part by less than anything looked at.</summary>
    private static CanopyForecast Sure(params SpacingStep[] steps) => new(new GrowthFit(Curve, Matrix<double>.Build.DenseIdentity(3) * 1e-16, 0, double.NaN), steps, 1);
}
