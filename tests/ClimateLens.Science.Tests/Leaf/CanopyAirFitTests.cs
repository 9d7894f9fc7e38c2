using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>A canopy whose difference to the main sensor is known gives it back, with an error that holds it.</summary>
public class CanopyAirFitTests
{
    private const int Week = 168;

    [Fact]
    public void Of_NoReadings_IsTheAssumption()
    {
        var fit = CanopyAirFit.Of(InCanopyAir.Default, new([], [], [], [], [], [], []));
        CanopyAirOffset assumed = InCanopyAir.Default.At(1);
        CanopyAirOffset closed = fit.At(new(1, 0, double.PositiveInfinity), new(18), new(80));
        Assert.Equal(assumed.TemperatureK, closed.TemperatureK, 9);
        Assert.Equal(assumed.HumidityPct, closed.HumidityPct, 6); // at the air where points were turned into vapour pressure
        Assert.Equal(Math.Sqrt((0.4 * 0.4) + (assumed.TemperatureErrorK * assumed.TemperatureErrorK)), closed.TemperatureErrorK, 1e-9); // with a lasting difference of 0.4 K
        Assert.True(closed.HumidityErrorPct > assumed.HumidityErrorPct);
        Assert.Equal(0, fit.At(new(0.5, 0, double.PositiveInfinity), new(18), new(80)).TemperatureK, 9); // an open canopy does not differ
        Assert.Equal(0, fit.Temperature.Count);
    }

    [Fact]
    public void Of_KnownDifferences_GivesThemBackWithinItsError()
    {
        var random = new SeededRandom(21);
        int held = 0, heldVapour = 0;
        double widest = 0, widestVapour = 0;
        const int trials = 200;
        for (int trial = 0; trial < trials; trial++)
        {
            Truth truth = new(random.NextNormal() * 0.3, -0.5 + (random.NextNormal() * 0.5), random.NextNormal(), random.NextNormal() * 0.5);
            CanopyAirFit fit = Fit(truth, random, from: 0.6, to: 1, out _);
            CanopyAirOffset at = fit.At(new(0.9, 200, 2), new(20), new(75));
            double expected = truth.At(0.75, 200, 2);
            held += Math.Abs(at.TemperatureK - expected) <= 1.645 * at.TemperatureErrorK ? 1 : 0;
            heldVapour += Math.Abs(Vapour(at) - (0.1 * expected)) <= 1.645 * VapourError(fit) ? 1 : 0;
            widest = Math.Max(widest, at.TemperatureErrorK);
            widestVapour = Math.Max(widestVapour, VapourError(fit));
        }

        Assert.InRange(held / (double)trials, 0.8, 1); // 0.9 of the normal distribution
        Assert.InRange(heldVapour / (double)trials, 0.8, 1);
        Assert.True(widest < 0.25, $"{widest}"); // a week of readings says more than the assumption's 0.5 K
        Assert.True(widestVapour < 0.025, $"{widestVapour}"); // and than its 0.05 kPa and more
    }

    /// <summary>What is stated of the assumption, turned into vapour pressure and back by differences of its own: 18 °C and 80 %, closed canopy, never watered, no sun.</summary>
    [Theory]
    [InlineData(-0.5, 0.5, 3, 4)]
    [InlineData(-2, 1, 10, 8)]
    [InlineData(1, 0.2, -5, 2)]
    public void At_TheAssumption_HasTheErrorOfItsParts(double kelvin, double kelvinError, double pct, double pctError)
    {
        CanopyAirFit fit = CanopyAirFit.Of(new InCanopyAir(kelvin, kelvinError, pct, pctError), new([], [], [], [], [], [], []));
        const double step = 1e-4;
        double slope = (Es(18 + step) - Es(18 - step)) / (2 * step); // of the saturation curve
        double closedKPa = double.Hypot(slope * 0.8 * kelvinError, Es(18) * pctError / 100);
        double vapourError = double.Hypot(0.05, closedKPa), temperatureError = double.Hypot(0.4, kelvinError);
        double vapour = Es(18 + kelvin) * (80 + pct) / 100;
        double byTemperature = 100 * vapour * ((1 / Es(18 + kelvin + step)) - (1 / Es(18 + kelvin - step))) / (2 * step) * temperatureError;
        CanopyAirOffset at = fit.At(new(1, 0, double.PositiveInfinity), new(18), new(80));
        Assert.Equal(temperatureError, at.TemperatureErrorK, 1e-6);
        Assert.Equal(double.Hypot(100 / Es(18 + kelvin) * vapourError, byTemperature), at.HumidityErrorPct, 1e-3);
    }

    /// <summary>Sun counts by its share of 500 W/m² and the closure, water by its share left after four hours: what the assumption is not sure of.</summary>
    [Theory]
    [InlineData(1, 500, double.PositiveInfinity, 2, 0)]
    [InlineData(1, 250, double.PositiveInfinity, 1, 0)]
    [InlineData(0.8, 500, double.PositiveInfinity, 1, 0)]
    [InlineData(0.5, 1500, 0, 0, 1)]
    [InlineData(0.5, 0, 4, 0, 0.36788)]
    public void At_TheAssumption_IsLessSureInSunAndAfterWater(double cover, double sun, double hours, double bySun, double byWater)
    {
        CanopyAirFit fit = CanopyAirFit.Of(new InCanopyAir(0, 0, 0, 0), new([], [], [], [], [], [], []));
        Assert.Equal(Math.Sqrt((0.4 * 0.4) + (bySun * bySun) + (byWater * byWater)), fit.At(new(cover, sun, hours), new(18), new(80)).TemperatureErrorK, 1e-4);
    }

    [Theory]
    [InlineData(-0.1, 0, 1)]
    [InlineData(1.1, 0, 1)]
    [InlineData(0.5, -1, 1)]
    [InlineData(0.5, 1501, 1)]
    [InlineData(0.5, 0, -1)]
    public void At_ImpossibleDrivers_AreRefusedAndLeftOutOfTheFit(double cover, double sun, double hours)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CanopyAirFit.Of(InCanopyAir.Default, new([], [], [], [], [], [], [])).At(new(cover, sun, hours), new(18), new(80)));
        Assert.Equal(0, CanopyAirFit.Of(InCanopyAir.Default, new([18], [80], [17], [85], [cover], [sun], [hours])).Temperature.Count);
    }

    [Theory]
    [InlineData(1, 1500, 0)]
    [InlineData(0, 0, double.PositiveInfinity)]
    public void Of_DriversAtTheEndsOfTheirRange_AreUsed(double cover, double sun, double hours)
        => Assert.Equal(1, CanopyAirFit.Of(InCanopyAir.Default, new([60], [100], [-30], [0], [cover], [sun], [hours])).Temperature.Count);

    [Fact]
    public void Of_ColumnsOfOtherLengths_AreRefusedEach()
    {
        for (int shorter = 1; shorter < 7; shorter++)
        {
            double[][] c = [.. Enumerable.Range(0, 7).Select(i => new double[i == shorter ? 2 : 3])];
            Assert.Throws<ArgumentException>(() => CanopyAirFit.Of(InCanopyAir.Default, new(c[0], c[1], c[2], c[3], c[4], c[5], c[6])));
        }
    }

    [Fact]
    public void Of_OpenCanopyOnly_LeavesAClosedOneToTheAssumption()
    {
        CanopyAirFit fit = Fit(new(0.2, -3, 0, 0), new SeededRandom(4), from: 0.2, to: 0.5, out _);
        CanopyAirOffset open = fit.At(new(0.3, 0, double.PositiveInfinity), new(18), new(80));
        CanopyAirOffset closed = fit.At(new(1, 0, double.PositiveInfinity), new(18), new(80));
        Assert.Equal(0.2, open.TemperatureK, 0.1);
        Assert.True(closed.TemperatureErrorK > 0.45, $"{closed}"); // nothing was learnt of it
        Assert.Equal(0.2 - 0.5, closed.TemperatureK, 0.15);
    }

    [Fact]
    public void Of_ReadingsThatAreNotKnownOrImpossible_AreLeftOut()
    {
        Fit(new(0, -1, 0, 0), new SeededRandom(4), 0.6, 1, out Columns columns);
        columns.CanopyC[3] = double.NaN;
        columns.MainPct[4] = 140;
        columns.Cover[5] = double.NaN;
        Assert.Equal(Week - 3, columns.Fit().Temperature.Count);
    }

    [Fact]
    public void Of_ResidualsThatHangTogether_CountForLess()
    {
        CanopyAirFit unrelated = Fit(new(0, -1, 0, 0), new SeededRandom(9), 0.6, 1, out Columns columns);
        double drift = 0;
        var random = new SeededRandom(10);
        for (int i = 0; i < Week; i++)
        {
            columns.CanopyC[i] += drift = (0.95 * drift) + (0.2 * random.NextNormal());
        }

        DifferenceFit fit = columns.Fit().Temperature;
        Assert.True(fit.EffectiveCount < Week / 4, $"{fit.EffectiveCount}");
        // The scatter alone widens the error by its own ratio; that the readings hang together must widen it further.
        double wider = Math.Sqrt(fit.Covariance[3, 3] / unrelated.Temperature.Covariance[3, 3]);
        Assert.True(wider > 1.5 * fit.Residual / unrelated.Temperature.Residual, $"{wider}");
    }

    [Fact]
    public void At_ColderCanopyWithTheSameVapour_IsDamperAndNeverOver100()
    {
        var colder = new InCanopyAir(-2, 0.1, 0, 0.1);
        var fit = CanopyAirFit.Of(colder with { ClosedHumidityPct = 40 }, new([], [], [], [], [], [], []));
        Assert.Equal(100, 95 + fit.At(new(1, 0, 9), new(18), new(95)).HumidityPct);
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.At(new(1.1, 0, 9), new(18), new(95)));
        Assert.True(double.IsNaN(fit.At(new(double.NaN, 0, 9), new(18), new(95)).TemperatureK));
    }

    private static CanopyAirFit Fit(Truth truth, SeededRandom random, double from, double to, out Columns columns)
    {
        columns = new Columns();
        for (int i = 0; i < Week; i++)
        {
            double sun = Math.Max(0, 500 * Math.Sin((i % 24 - 6) * Math.PI / 12)), since = (i + 8) % 24;
            columns.Cover[i] = from + ((to - from) * i / Week);
            (columns.Sun[i], columns.Hours[i]) = (sun, since);
            (columns.MainC[i], columns.MainPct[i]) = (18 + (sun / 100), 75);
            double differs = truth.At(Math.Clamp((columns.Cover[i] - 0.6) / 0.4, 0, 1), sun, since);
            columns.CanopyC[i] = columns.MainC[i] + differs + (0.2 * random.NextNormal());
            double vapour = Es(columns.MainC[i]) * 0.75;
            columns.CanopyPct[i] = 100 * (vapour + (0.1 * differs) + (0.02 * random.NextNormal())) / Es(columns.CanopyC[i]);
        }

        return columns.Fit();
    }

    private static double Es(double t) => SaturationVapourPressure.OverWater(new(t)).Value;

    private static double Vapour(CanopyAirOffset at) => (Es(20 + at.TemperatureK) * (75 + at.HumidityPct) / 100) - (Es(20) * 0.75);

    private static double VapourError(CanopyAirFit fit)
    {
        double[] x = [1, 0.75, 0.75 * 200 / 500, Math.Exp(-2 / 4.0)];
        double sum = 0;
        for (int i = 0; i < 4; i++)
        {
            for (int j = 0; j < 4; j++)
            {
                sum += x[i] * fit.VapourPressure.Covariance[i, j] * x[j];
            }
        }

        return Math.Sqrt(sum);
    }

    private sealed record Truth(double Lasting, double Closure, double Sun, double Water)
    {
        public double At(double closure, double sunWm2, double hours) =>
            Lasting + (Closure * closure) + (Sun * closure * sunWm2 / 500) + (Water * Math.Exp(-hours / 4));
    }

    private sealed class Columns
    {
        public double[] MainC { get; } = new double[Week];

        public double[] MainPct { get; } = new double[Week];

        public double[] CanopyC { get; } = new double[Week];

        public double[] CanopyPct { get; } = new double[Week];

        public double[] Cover { get; } = new double[Week];

        public double[] Sun { get; } = new double[Week];

        public double[] Hours { get; } = new double[Week];

        public CanopyAirFit Fit() =>
            CanopyAirFit.Of(InCanopyAir.Default, new(MainC, MainPct, CanopyC, CanopyPct, Cover, Sun, Hours));
    }
}
