using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Balance;

public class BalanceFitTests
{
    [Fact]
    public void Fit_KnownParameters_ComeBackWithinTheirErrors()
    {
        int within = 0, all = 0, told = 0;
        double worst = 0;
        for (ulong seed = 1; seed <= 8; seed++)
        {
            double[] truth = MadeUpBalance.Parameters(new SeededRandom(seed));
            BalanceFit fit = BalanceFit.Of(MadeUpBalance.Measured(MadeUpBalance.Drivers(seed, 21), truth, seed, 0.1));
            Assert.Equal(TermCatalogue.All.Count, fit.Fitted.Count);
            foreach (FittedTerm term in fit.Fitted.Where(t => !double.IsNaN(t.Error)))
            {
                double away = Math.Abs(term.Value - truth[(int)term.Info.Term]) / term.Error;
                worst = Math.Max(worst, away);
                within += away < 3 ? 1 : 0;
                told += term.IsTold ? 1 : 0;
                all++;
            }

            Assert.InRange(fit.ResidualGm3, 0.05, 0.2);
        }

        Assert.True(all >= 90, $"Of 104 parameters {all} are free.");
        Assert.True(within >= 0.95 * all, $"{within} of {all}, worst {worst}");
        Assert.True(told >= 0.75 * all, $"The data told {told} of {all}.");
    }

    [Fact]
    public void Fit_WithoutNoise_IsAsGoodAsExact()
    {
        double[] truth = TermCatalogue.Typical();
        truth[(int)BalanceTerm.SunTranspiration] = 0.7;
        truth[(int)BalanceTerm.Leak] = 3;
        BalanceFit fit = BalanceFit.Of(MadeUpBalance.Measured(MadeUpBalance.Drivers(1, 14), truth, 1, 0));
        Assert.True(fit.ResidualGm3 <= 0.02, $"{fit.ResidualGm3}");
        Assert.Equal(0.7, fit.Parameters()[(int)BalanceTerm.SunTranspiration], 0.05);
        Assert.Equal(3, fit.Parameters()[(int)BalanceTerm.Leak], 0.3);
    }

    [Fact]
    public void Fit_SameInput_GivesTheSameBits()
    {
        BalanceInputs inputs = MadeUpBalance.Measured(MadeUpBalance.Drivers(3, 10), TermCatalogue.Typical(), 3, 0.2);
        BalanceFit first = BalanceFit.Of(inputs), second = BalanceFit.Of(inputs);
        Assert.Equal(first.Parameters(), second.Parameters());
        Assert.Equal(first.Covariance, second.Covariance);
        Assert.Equal(first.Draw(new SeededRandom(1)), second.Draw(new SeededRandom(1)));
    }

    [Fact]
    public void Fit_ParameterThatPhysicsForbids_StandsAtItsBoundAndSaysSo()
    {
        double[] truth = TermCatalogue.Typical();
        truth[(int)BalanceTerm.SunTranspiration] = -0.3; // the sun dries this house
        BalanceFit fit = BalanceFit.Of(MadeUpBalance.Measured(MadeUpBalance.Drivers(2, 14), truth, 2, 0.1));
        FittedTerm sun = fit.Fitted.Single(f => f.Info.Term == BalanceTerm.SunTranspiration);
        Assert.True(sun is { AtLow: true, AtHigh: false, IsTold: false } && double.IsNaN(sun.Error), $"{sun}");
        Assert.All(Enumerable.Range(0, 20), i => Assert.Equal(0, fit.Draw(new SeededRandom((ulong)i))[(int)BalanceTerm.SunTranspiration]));
    }

    [Fact]
    public void Draws_SpreadAsTheCovarianceSays()
    {
        BalanceFit fit = BalanceFit.Of(MadeUpBalance.Measured(MadeUpBalance.Drivers(4, 21), TermCatalogue.Typical(), 4, 0.1));
        var random = new SeededRandom(5);
        double[][] draws = [.. Enumerable.Range(0, 2000).Select(_ => fit.Draw(random))];
        FittedTerm term = fit.Fitted.Single(f => f.Info.Term == BalanceTerm.SunTranspiration);
        double mean = draws.Average(d => d[0]), spread = Math.Sqrt(draws.Average(d => Math.Pow(d[0] - mean, 2)));
        Assert.Equal(term.Value, mean, 4 * term.Error / Math.Sqrt(2000));
        Assert.Equal(term.Error, spread, 0.1 * term.Error);
        Assert.All(draws, d => Assert.All(TermCatalogue.All, info => Assert.InRange(d[(int)info.Term], info.Low, info.High)));
    }

    [Fact]
    public void Fit_WithoutVentsWindFansAndCover_IsOneExchangeAndNamesWhatItLacks()
    {
        BalanceInputs full = MadeUpBalance.Measured(MadeUpBalance.Drivers(6, 14), TermCatalogue.Typical(), 6, 0.1);
        double[] windLost = full.WindMs.ToArray();
        Array.Fill(windLost, double.NaN, 0, windLost.Length / 2);
        BalanceFit fit = BalanceFit.Of(full with { Vent = default, WindMs = windLost, Fan = default, CoverC = default, Cover = default });
        Assert.Equal(new BalanceTerms(true, false, false, false, false, false, true, true), fit.Terms);
        Assert.DoesNotContain(fit.Fitted, f => f.Info.Term is BalanceTerm.VentStill or BalanceTerm.VentWind or BalanceTerm.WindLeak or BalanceTerm.Fan);
        Assert.True(fit.IsFitted && fit.ResidualGm3 < 3, $"{fit.ResidualGm3}");
        // What vents took must now be taken by the leak, or not have been given off: the data tell the ratio alone.
        double[] found = fit.Parameters(), typical = TermCatalogue.Typical();
        double Ratio(double[] p) => p[(int)BalanceTerm.Leak] / p[(int)BalanceTerm.AirTranspiration];
        Assert.True(Ratio(found) > 2 * Ratio(typical), $"{Ratio(found)} {Ratio(typical)}");
    }

    [Fact]
    public void Fit_WithoutWhatItNeeds_SaysWhy()
    {
        BalanceInputs full = MadeUpBalance.Measured(MadeUpBalance.Drivers(6, 8), TermCatalogue.Typical(), 6, 0.1);
        double[] none = new double[full.Steps];
        Array.Fill(none, double.NaN);
        Assert.Equal(BalanceProblem.NoOutsideHumidity, BalanceFit.Of(full with { OutsideGm3 = none }).Problem);
        Assert.Equal(BalanceProblem.NoHouseAir, BalanceFit.Of(full with { AirC = none }).Problem);
        Assert.Equal(BalanceProblem.TooLittle, BalanceFit.Of(full, day => day < 3).Problem);
        Assert.False(BalanceFit.Of(full with { OutsideGm3 = none }).IsFitted);
        Assert.Null(BalanceScore.Of(full with { OutsideGm3 = none }));
        Assert.Throws<ArgumentException>(() => BalanceFit.Of(full with { SunWm2 = new double[3] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BalanceFit.Of(full with { HeightM = 0.5 }));
    }

    [Fact]
    public void Fit_WithGaps_IsAboutTheSame()
    {
        BalanceInputs full = MadeUpBalance.Measured(MadeUpBalance.Drivers(7, 21), TermCatalogue.Typical(), 7, 0.1);
        double[] humidity = full.HumidityGm3.ToArray(), outside = full.OutsideGm3.ToArray();
        for (int i = 0; i < humidity.Length; i++)
        {
            humidity[i] = i % 500 < 60 ? double.NaN : humidity[i];
            outside[i] = i % 700 is > 300 and < 380 ? double.NaN : outside[i];
        }

        BalanceFit whole = BalanceFit.Of(full), torn = BalanceFit.Of(full with { HumidityGm3 = humidity, OutsideGm3 = outside });
        Assert.True(torn.Steps < 0.85 * whole.Steps);
        foreach ((FittedTerm a, FittedTerm b) in whole.Fitted.Zip(torn.Fitted))
        {
            Assert.True(double.IsNaN(a.Error + b.Error) || Math.Abs(a.Value - b.Value) < 4 * b.Error, $"{a} {b}");
        }
    }

    /// <summary>A house twice as high with twice all flows has the same humidity, and the fit finds twice the parameters.</summary>
    [Fact]
    public void Height_ScalesAllFlowsAndNoHumidity()
    {
        BalanceInputs low = MadeUpBalance.Drivers(8, 6), high = low with { HeightM = 8 };
        double[] parameters = TermCatalogue.Typical();
        double[] doubled = [.. parameters.Select((p, i) => (BalanceTerm)i == BalanceTerm.SunDrying ? p : 2 * p)];
        double[] one = BalanceReplay.Run(low, MadeUpBalance.AllTerms, parameters), other = BalanceReplay.Run(high, MadeUpBalance.AllTerms, doubled);
        Assert.All(one.Zip(other).Skip(1), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }
}
