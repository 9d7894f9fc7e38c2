using ClimateLens.Science.Canopy;
using ClimateLens.Science.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace ClimateLens.Science.Tests.Canopy;

/// <summary>Measured widths narrow what is believed of a crop, and the band holds the truth as often as it says.</summary>
public class GrowthFitTests
{
    private static readonly SpacingStep[] Bench = [new(0, PlantSpacing.Square(30))];

    [Fact]
    public void Of_NoWidths_IsThePrior()
    {
        GrowthPrior prior = GrowthPrior.Poinsettia;
        GrowthFit fit = GrowthFit.Of(prior, []);
        Assert.Equal(prior.Growth.LargestCm, fit.Growth.LargestCm, 9);
        Assert.Equal(prior.HalfwayErrorDays, Math.Sqrt(fit.Covariance[2, 2]), 9);
        Assert.True(double.IsNaN(fit.ResidualCm));
    }

    /// <summary>What the prior's docstring promises: three widths outweigh it.</summary>
    [Fact]
    public void Of_ThreeWidths_OutweighThePrior()
    {
        var truth = new DiameterGrowth(30, 0.13, 12);
        GrowthFit fit = GrowthFit.Of(GrowthPrior.Poinsettia, Widths(truth, [10, 20, 30]));
        foreach (double day in new[] { 10.0, 20, 30 })
        {
            double prior = GrowthPrior.Poinsettia.Growth.DiameterCm(day);
            Assert.True(Math.Abs(fit.Growth.DiameterCm(day) - truth.DiameterCm(day)) < 0.25 * Math.Abs(prior - truth.DiameterCm(day)) + 0.5, $"day {day}: {fit.Growth.DiameterCm(day)}, {truth.DiameterCm(day)}, {prior}");
        }
    }

    [Fact]
    public void On_ThreeWidths_NarrowTheBandAndTheClosure()
    {
        var before = new CanopyForecast(GrowthFit.Of(GrowthPrior.Poinsettia, []), Bench, 1);
        var after = new CanopyForecast(GrowthFit.Of(GrowthPrior.Poinsettia, Widths(new(40, 0.09, 25), [10, 20, 30])), Bench, 1);
        CoverDay wide = before.On(30), narrow = after.On(30);
        Assert.True(wide.High - wide.Low > 0.4, $"{wide}"); // honestly wide
        Assert.True(narrow.High - narrow.Low < 0.4 * (wide.High - wide.Low), $"{narrow}, {wide}");
        SpacingStep[] tight = [new(0, PlantSpacing.Square(22))]; // at 30 cm a third of such crops never close
        ClosureForecast early = new CanopyForecast(GrowthFit.Of(GrowthPrior.Poinsettia, []), tight, 1).Closure(0, 200);
        ClosureForecast late = new CanopyForecast(GrowthFit.Of(GrowthPrior.Poinsettia, Widths(new(40, 0.09, 25), [10, 20, 30])), tight, 1).Closure(0, 200);
        Assert.True(late.HighDay - late.LowDay < 0.5 * (early.HighDay - early.LowDay), $"{late}, {early}");
        Assert.True(late.LowDay < late.Day && late.Day < late.HighDay && late.Reached);
    }

    /// <summary>Crops drawn from the prior, measured with an error: the 5 to 95 % band of the cover a week later holds the truth nine times in ten.</summary>
    [Fact]
    public void On_CropsLikeThePrior_BandHoldsTheTruthAsOftenAsItSays()
    {
        var random = new SeededRandom(8);
        int held = 0;
        const int crops = 200;
        for (int crop = 0; crop < crops; crop++)
        {
            GrowthPrior prior = GrowthPrior.Poinsettia;
            var truth = new DiameterGrowth(
                40 * Math.Exp(0.25 * random.NextNormal()), 0.09 * Math.Exp(0.35 * random.NextNormal()), 25 + (10 * random.NextNormal()));
            PlantWidth[] widths = [.. new[] { 10.0, 17, 24 }.Select(day => Measured(truth, day, random))];
            CoverDay band = new CanopyForecast(GrowthFit.Of(prior, widths), Bench, (ulong)crop).On(31);
            double cover = GroundCover.Of(PlantSpacing.Square(30), truth.DiameterCm(31));
            held += cover >= band.Low - 1e-9 && cover <= band.High + 1e-9 ? 1 : 0;
        }

        Assert.InRange(held / (double)crops, 0.83, 0.97); // 0.9 ± three standard errors
    }

    [Fact]
    public void Covariance_OfManyWidths_IsTheScatterOfFits()
    {
        var truth = new DiameterGrowth(40, 0.09, 25);
        var random = new SeededRandom(2);
        double[] days = [.. Enumerable.Range(0, 12).Select(i => 5.0 * i)];
        Matrix<double> claimed = GrowthFit.Of(GrowthPrior.AnyPotCrop, [.. days.Select(d => Exact(truth, d))]).Covariance;
        double[] halfway = [.. Enumerable.Range(0, 200).Select(_ =>
            GrowthFit.Of(GrowthPrior.AnyPotCrop, [.. days.Select(d => Measured(truth, d, random))]).Growth.HalfwayDay)];
        double mean = halfway.Average(), scatter = Math.Sqrt(halfway.Sum(h => (h - mean) * (h - mean)) / halfway.Length);
        Assert.Equal(1, scatter / Math.Sqrt(claimed[2, 2]), 0.2);
    }

    [Fact]
    public void Closure_WiderSpacingInTime_ComesLaterOrNotAtAll()
    {
        GrowthFit fit = GrowthFit.Of(GrowthPrior.Poinsettia, Widths(new(40, 0.09, 25), [10, 20, 30]));
        ClosureForecast tight = new CanopyForecast(fit, Bench, 1).Closure(0, 200);
        ClosureForecast spaced = new CanopyForecast(fit, [.. Bench, new(25, PlantSpacing.Square(36))], 1).Closure(0, 200);
        Assert.True(spaced.Day > tight.Day);
        Assert.True(spaced.ShareReached <= tight.ShareReached);
        Assert.Throws<ArgumentException>(() => new CanopyForecast(fit, [new(5, Bench[0].Spacing), new(5, Bench[0].Spacing)], 1));
    }

    [Fact]
    public void On_SameSeed_IsTheSameBand()
    {
        GrowthFit fit = GrowthFit.Of(GrowthPrior.Cyclamen, []);
        Assert.Equal(new CanopyForecast(fit, Bench, 5).On(40), new CanopyForecast(fit, Bench, 5).On(40));
        double[] covers = new double[CanopyForecast.Draws];
        var forecast = new CanopyForecast(fit, Bench, 5);
        forecast.CoversOn(40, covers);
        Array.Sort(covers);
        Assert.Equal(forecast.On(40).Low, Quantiles.Of(covers, 0.05), 0.01);
    }

    private static PlantWidth[] Widths(DiameterGrowth truth, double[] days) => [.. days.Select(day => Exact(truth, day))];

    private static PlantWidth Exact(DiameterGrowth truth, double day) => new(day, truth.DiameterCm(day), 1);

    /// <summary>Scatter of the measure, 1 cm, and of the curve's shape, 3 %: what the fit takes them to be.</summary>
    private static PlantWidth Measured(DiameterGrowth truth, double day, SeededRandom random)
    {
        double width = truth.DiameterCm(day);
        return new(day, Math.Max(0.2, width + (double.Hypot(1, 0.03 * width) * random.NextNormal())), 1);
    }
}
