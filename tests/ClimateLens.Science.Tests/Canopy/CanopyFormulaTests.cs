using ClimateLens.Science.Canopy;

namespace ClimateLens.Science.Tests.Canopy;

/// <summary>The small formulas of a canopy by hand, and what they refuse.</summary>
public class CanopyFormulaTests
{
    /// <summary>By hand from <c>c = clamp((cover - 0.6)/0.4, 0, 1)</c> and <c>1 - 0.5 c</c>.</summary>
    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(0.6, 0, 1)]
    [InlineData(0.7, 0.25, 0.875)]
    [InlineData(0.8, 0.5, 0.75)]
    [InlineData(0.9, 0.75, 0.625)]
    [InlineData(1, 1, 0.5)]
    public void Shelter_Cover_IsTheStatedRamp(double cover, double closure, double airShare)
    {
        Assert.Equal(closure, CanopyShelter.Closure(cover), 12);
        Assert.Equal(airShare, CanopyShelter.AirSpeedShare(cover), 12);
    }

    /// <summary>By hand: half the width at the half-way day, and 1/(1 + e^∓1) of it one time constant from it.</summary>
    [Fact]
    public void DayOf_Width_IsTheInverseOfTheCurve()
    {
        var growth = new DiameterGrowth(40, 0.1, 25);
        Assert.Equal(25, growth.DayOf(20), 9);
        Assert.Equal(35, growth.DayOf(40 / (1 + Math.Exp(-1))), 9);
        Assert.Equal(15, growth.DayOf(40 / (1 + Math.E)), 9);
    }

    [Theory]
    [InlineData(-5)]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(50)]
    [InlineData(double.NaN)]
    public void DayOf_WidthNeverReached_IsNaN(double width) => Assert.Equal(double.NaN, new DiameterGrowth(40, 0.1, 25).DayOf(width));

    [Fact]
    public void GroundCover_NotKnown_IsNaN()
    {
        foreach (PlantSpacing spacing in new[] { PlantSpacing.Square(30), PlantSpacing.Triangular(30), PlantSpacing.Rectangular(30, 40), PlantSpacing.Random(9) })
        {
            Assert.Equal(double.NaN, GroundCover.Of(spacing, double.NaN));
            Assert.Equal(double.NaN, GroundCover.DiameterCm(spacing, double.NaN));
        }
    }

    /// <summary>By hand: the product, 3 within plants where nothing is said.</summary>
    [Fact]
    public void LeafArea_Cover_IsTheProduct()
    {
        Assert.Equal(1.5, LightInterception.LeafArea(0.5), 12);
        Assert.Equal(1, LightInterception.LeafArea(0.25, 4), 12);
        Assert.Equal(0, LightInterception.LeafArea(0));
    }

    [Theory]
    [InlineData(-0.1, 3)]
    [InlineData(1.1, 3)]
    [InlineData(0.5, 0.05)]
    [InlineData(0.5, 21)]
    public void LeafArea_Impossible_Throws(double cover, double withinPlants)
        => Assert.Throws<ArgumentOutOfRangeException>(() => LightInterception.LeafArea(cover, withinPlants));

    [Fact]
    public void Prior_Name_IsFoundInAnyCaseOrNotAtAll()
    {
        Assert.Same(GrowthPrior.Cyclamen, GrowthPrior.Of("CycLamen"));
        Assert.Null(GrowthPrior.Of("fern"));
    }

    [Theory]
    [InlineData(0.9, 30)]
    [InlineData(501, 30)]
    [InlineData(double.NaN, 30)]
    [InlineData(30, 0.9)]
    [InlineData(30, 501)]
    [InlineData(30, double.PositiveInfinity)]
    public void Spacing_Impossible_Throws(double across, double along)
        => Assert.Throws<ArgumentOutOfRangeException>(() => PlantSpacing.Rectangular(across, along));

    [Theory]
    [InlineData(0.9, 0.1, 25)]
    [InlineData(201, 0.1, 25)]
    [InlineData(double.NaN, 0.1, 25)]
    [InlineData(40, 0.0009, 25)]
    [InlineData(40, 2.1, 25)]
    [InlineData(40, double.NaN, 25)]
    [InlineData(40, 0.1, -201)]
    [InlineData(40, 0.1, 401)]
    [InlineData(40, 0.1, double.NaN)]
    public void GrowthFit_ImpossiblePrior_Throws(double largest, double rate, double halfway)
        => Assert.Throws<ArgumentOutOfRangeException>(() => GrowthFit.Of(GrowthPrior.Poinsettia with { Growth = new(largest, rate, halfway) }, []));

    [Theory]
    [InlineData(double.NaN, 20, 1)]
    [InlineData(double.PositiveInfinity, 20, 1)]
    [InlineData(10, 0.05, 1)]
    [InlineData(10, 501, 1)]
    [InlineData(10, double.NaN, 1)]
    [InlineData(10, 20, 0.009)]
    [InlineData(10, 20, 101)]
    [InlineData(10, 20, double.NaN)]
    public void GrowthFit_ImpossibleWidth_Throws(double day, double width, double error)
        => Assert.Throws<ArgumentOutOfRangeException>(() => GrowthFit.Of(GrowthPrior.Poinsettia, [new(day, width, error)]));
}
