using ClimateLens.Science.Pots;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Pots;

/// <summary>Drying rates, their noise and the scale's steps worked out by hand from the docstrings, and what they refuse.</summary>
public class PotByHandTests
{
    /// <summary>Falls after 10 kPa h, by turns 0.3 above and below half a level: the rate is 0.05, the residuals ±0.3, their squares 0.54 over five degrees of freedom.</summary>
    private static readonly DryingStretch[] Six = [.. Enumerable.Range(0, 6).Select(i => new DryingStretch(0, 10, i % 2 == 0 ? 0.8 : 0.2))];

    [Fact]
    public void Fit_SixStretches_HasTheNoiseOfTheirResiduals()
    {
        DryingRates fit = DryingRates.Fit(Six, 1)!; // six are the fewest
        Assert.Equal(0.05, fit.Rates.Groups[0].Mean, 9);
        Assert.Equal(Math.Sqrt(0.54 / 5), fit.Noise, 9);
        Assert.Equal(0.54 / 5 / 600, fit.Rates.Groups[0].Variance, 9); // noise² over Σ power²
        Assert.Equal(6, fit.Stretches);
    }

    /// <summary>3 - 0.05 · 20 = 2; variance 0.108 of the noise, 0.00018 · 20² = 0.072 of the rate and (0.05 · 4)² = 0.04 of the power; 1.6449 is the normal distribution's 95 % point.</summary>
    [Fact]
    public void After_RangeOfAForecast_AddsNoiseRateAndPower()
    {
        Interval after = DryingRates.Fit(Six, 1)!.After(0, 3, 20, 4);
        double reach = 1.6448536 * Math.Sqrt(0.108 + 0.072 + 0.04);
        Assert.Equal(2, after.Value, 9);
        Assert.Equal(2 - reach, after.Low, 1e-6);
        Assert.Equal(2 + reach, after.High, 1e-6);
    }

    /// <summary>Two benches of three stretches: each has its own rate, so four degrees of freedom are left of six. Bench numbers are names: 1 and 4 are two benches as well.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 4)]
    public void Fit_TwoBenches_LoseADegreeOfFreedomEach(int first, int second)
    {
        double[] falls = [0.4, 0.5, 0.6, 0.9, 1, 1.1]; // rates 0.05 and 0.1, residuals -0.1, 0, 0.1 on each
        DryingRates fit = DryingRates.Fit(falls.Select((fall, i) => new DryingStretch(i < 3 ? first : second, 10, fall)), 5)!;
        Assert.Equal(0.1, fit.Noise, 9); // √(0.04/4)
        Assert.Equal(5, fit.Rates.Groups.Length);
    }

    [Fact]
    public void Fit_StretchesWithoutPowerOrNotKnown_ArePassedOver()
    {
        DryingRates plain = DryingRates.Fit(Six, 2)!;
        DryingRates more = DryingRates.Fit([.. Six, new(1, 0, 0.5), new(0, -1, 0.5), new(0, double.NaN, 0.5), new(0, 10, double.NaN), new(0, double.PositiveInfinity, 1)], 2)!;
        Assert.Equal((plain.Stretches, plain.Noise), (more.Stretches, more.Noise));
        Assert.Equal(plain.Rates.Groups.AsEnumerable(), more.Rates.Groups);
    }

    [Fact]
    public void Fit_NoMoreStretchesThanBenches_IsNotKnown() => Assert.Null(DryingRates.Fit(Enumerable.Range(0, 6).Select(bench => new DryingStretch(bench, 10, 0.5)), 6));

    /// <summary>Counted from 0 in halves from level 1 on; a quarter goes up.</summary>
    [Theory]
    [InlineData(1, 0)]
    [InlineData(1.24, 0)]
    [InlineData(1.25, 1)]
    [InlineData(2.25, 3)]
    [InlineData(3, 4)]
    [InlineData(4.5, 7)]
    [InlineData(5, 8)]
    public void HalfLevelOf_Level_IsTheNearestHalf(double level, int half) => Assert.Equal(half, MoistureScale.HalfLevelOf(level));

    [Theory]
    [InlineData(0.9)]
    [InlineData(5.1)]
    [InlineData(double.NaN)]
    public void HalfLevelOf_Impossible_Throws(double level) => Assert.Throws<ArgumentOutOfRangeException>(() => MoistureScale.HalfLevelOf(level));

    [Fact]
    public void LevelOf_DryPot_IsOne()
    {
        Assert.Equal(1, PotWeight.LevelOf(0)); // 1 at and below 0
        Assert.Equal(double.NaN, PotWeight.LevelOf(double.NaN));
    }

    [Theory]
    [InlineData(-1, 600, 1100)]
    [InlineData(900, -1, 1100)]
    [InlineData(900, double.NaN, 1100)]
    [InlineData(900, 600, double.NaN)]
    [InlineData(900, 600, 600)]
    public void Fraction_ImpossibleWeight_Throws(double weight, double dry, double soaked)
        => Assert.Throws<ArgumentOutOfRangeException>(() => PotWeight.Fraction(weight, dry, soaked));

    [Theory]
    [InlineData(5.1, 3)]
    [InlineData(0.9, 0.9)]
    [InlineData(3, 0.9)]
    [InlineData(3, 3.1)]
    public void SwingIndex_ImpossibleLevel_Throws(double highest, double lowest)
        => Assert.Throws<ArgumentOutOfRangeException>(() => SwingIndex.Of([(highest, lowest)]));

    [Fact]
    public void SwingIndex_WithoutDays_Throws() => Assert.Throws<ArgumentNullException>(() => SwingIndex.Of(null!));
}
