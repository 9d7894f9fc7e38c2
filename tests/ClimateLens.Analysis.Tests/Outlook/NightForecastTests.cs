using ClimateLens.Analysis.Outlook;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Outlook;

/// <summary>The forecast of a night against made-up nights of which all is known.</summary>
public sealed class NightForecastTests
{
    private const double NightHours = 13;

    [Fact]
    public void Of_NightsThatFollowTheDayBefore_BeatsBothGuessesAndIsNear()
    {
        (NightTable nights, double truth) = Nights(seed: 1, perDay: 3, noise: 0.3);
        NightForecast forecast = NightForecast.Of(nights)!;
        Assert.True(forecast.IsBetter, $"{forecast}");
        Assert.InRange(forecast.RiskHours, truth - 3, truth + 3); // a strong penalty pulls towards the mean
        Assert.True(forecast.Low <= forecast.RiskHours && forecast.RiskHours <= forecast.High && forecast.Low >= 0 && forecast.High <= NightHours);
    }

    [Fact]
    public void Of_NightsThatNothingTells_IsSeldomCalledBetter_AndItsRangeHoldsMostNights()
    {
        int better = 0, held = 0;
        const int Houses = 300;
        for (ulong seed = 1; seed <= Houses; seed++)
        {
            (NightTable nights, double truth) = Nights(seed, perDay: 0, noise: 2);
            NightForecast forecast = NightForecast.Of(nights)!;
            better += forecast.IsBetter ? 1 : 0;
            held += truth >= forecast.Low && truth <= forecast.High ? 1 : 0;
        }

        Assert.InRange(better, 0, Houses / 10);
        Assert.InRange((double)held / Houses, 0.8, 0.97);
    }

    [Fact]
    public void Of_TooFewNights_TellsNothing()
    {
        (NightTable nights, _) = Nights(1, 3, 0.3, count: NightForecast.FewestLearned + NightForecast.FewestScored);
        Assert.Null(NightForecast.Of(nights));
        (nights, _) = Nights(1, 3, 0.3, count: NightForecast.FewestLearned + NightForecast.FewestScored + 2);
        Assert.NotNull(NightForecast.Of(nights));
    }

    [Fact]
    public void Of_NightBefore_IsNotLearnedFrom()
    {
        (NightTable nights, _) = Nights(1, 3, 0.3);
        double before = NightForecast.Of(nights)!.RiskHours;
        nights.Columns[NightTable.Target][^2] = 0; // not over yet when the coming one is foretold
        Assert.Equal(before, NightForecast.Of(nights)!.RiskHours);
    }

    private static (NightTable Nights, double Truth) Nights(ulong seed, double perDay, double noise, int count = 33)
    {
        SeededRandom random = new(seed);
        double[] target = new double[count], damp = new double[count], other = new double[count], hours = new double[count];
        for (int n = 0; n < count; n++)
        {
            (damp[n], other[n], hours[n]) = (random.NextNormal(), random.NextNormal(), NightHours);
            target[n] = Math.Clamp(6 + (perDay * damp[n]) + (noise * random.NextNormal()), 0, NightHours);
        }

        double truth = target[^1];
        target[^1] = double.NaN;
        LocalDate first = new(2025, 9, 10);
        return (new NightTable([.. Enumerable.Range(0, count).Select(first.PlusDays)], [target, damp, other, hours]), truth);
    }
}
