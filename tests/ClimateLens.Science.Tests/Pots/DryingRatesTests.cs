using ClimateLens.Science.Pots;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Pots;

public class DryingRatesTests
{
    [Fact]
    public void Fit_ExactStretches_FindsTheRate()
    {
        DryingRates fit = DryingRates.Fit(Enumerable.Range(1, 8).Select(i => new DryingStretch(0, i, 0.05 * i)), 1)!;
        Assert.Equal(0.05, fit.Rates.Groups[0].Mean, 6);
        Assert.Equal(3 - (0.05 * 12), fit.After(0, 3, 12, 0).Value, 6);
    }

    [Fact]
    public void Fit_BenchWithoutData_GetsTheMeanAndAWiderRange()
    {
        var random = new SeededRandom(5);
        DryingRates fit = DryingRates.Fit(Simulated(random, [0.05, 0.08], 40), 3)!;
        Assert.InRange(fit.Rates.Groups[2].Mean, 0.05, 0.08);
        Interval known = fit.After(0, 3.5, 15, 0), unknown = fit.After(2, 3.5, 15, 0);
        Assert.True(unknown.High - unknown.Low > known.High - known.Low);
    }

    [Fact]
    public void Fit_FewStretches_IsNotKnown() => Assert.Null(DryingRates.Fit(Enumerable.Range(1, 5).Select(i => new DryingStretch(0, i, 0.05 * i)), 1));

    [Fact]
    public void After_RangeOfHeldOutStretches_HoldsAboutNineTenths()
    {
        int held = 0, tried = 0;
        for (ulong seed = 1; seed <= 50; seed++)
        {
            var random = new SeededRandom(seed);
            double[] truth = [.. Enumerable.Range(0, 4).Select(_ => 0.06 + (0.015 * random.NextNormal()))];
            DryingRates fit = DryingRates.Fit(Simulated(random, truth, 10), 4)!;
            foreach (DryingStretch stretch in Simulated(random, truth, 5))
            {
                Interval range = fit.After(stretch.Bench, 3.8, stretch.PowerKPaH, 0);
                double came = Math.Clamp(3.8 - stretch.Fall, 1, 5);
                held += range.Low <= came && came <= range.High ? 1 : 0;
                tried++;
            }
        }

        Assert.InRange((double)held / tried, 0.85, 0.95);
    }

    [Fact]
    public void After_MuchDrying_StaysOnTheScale()
    {
        DryingRates fit = DryingRates.Fit(Enumerable.Range(1, 8).Select(i => new DryingStretch(0, i, 0.1 * i)), 1)!;
        Assert.Equal(new Interval(1, 1, 1), fit.After(0, 4, 200, 0));
    }

    private static IEnumerable<DryingStretch> Simulated(SeededRandom random, double[] rates, int each)
        => [.. from bench in Enumerable.Range(0, rates.Length) from _ in Enumerable.Range(0, each) let power = random.NextUniform(4, 25) select new DryingStretch(bench, power, (rates[bench] * power) + (0.3 * random.NextNormal()))];
}
