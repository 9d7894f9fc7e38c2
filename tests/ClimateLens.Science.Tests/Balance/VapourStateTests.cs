using System.Runtime.Intrinsics;
using ClimateLens.Science.Balance;
using CsCheck;

namespace ClimateLens.Science.Tests.Balance;

/// <summary>One step of the balance against the differential equation, integrated in small steps by a method that knows nothing of exponentials.</summary>
public class VapourStateTests
{
    [Fact]
    public void Step_ConstantDrivers_IsTheSolutionOfTheEquation() => Gen.Select(
        Gen.Double[3, 20], Gen.Double[1, 15], Gen.Double[2, 20], Gen.Double[0, 400], Gen.Double[0.1, 30], Gen.Double[0, 40]).Sample((start, outside, coverGm3, sun, leak, dew) =>
    {
        double[] p = TermCatalogue.Typical();
        p[(int)BalanceTerm.Leak] = leak;
        p[(int)BalanceTerm.CoverCondensation] = dew;
        var at = new StepDrivers(25, outside, sun, 0.7, 0.2, 2, 0, coverGm3, 0, 0);
        var state = new VapourState(Vector256.Create(start));
        state.Step(Alike(p), at, 4, 0.5);
        double expected = Integrated(p, at, start);
        Assert.Equal(Math.Min(25, expected), state.HumidityGm3[0], 2e-3);
    }, iter: 300);

    [Fact]
    public void Step_ManyShortOnes_AreOneLong()
    {
        double[] p = TermCatalogue.Typical();
        var at = new StepDrivers(20, 6, 100, 0.7, 0.1, 2, 0, 9, 0, 0);
        VapourState once = new(Vector256.Create(14.0)), often = once;
        once.Step(Alike(p), at, 4, 1);
        for (int i = 0; i < 12; i++)
        {
            often.Step(Alike(p), at, 4, 1 / 12.0);
        }

        Assert.Equal(once.HumidityGm3[3], often.HumidityGm3[3], 1e-12);
    }

    private static Vector256<double>[] Alike(double[] p) => Array.ConvertAll(p, Vector256.Create);

    // Heun's method, 2000 steps.
    private static double Integrated(double[] p, in StepDrivers at, double start)
    {
        double humidity = start, step = 0.5 / 2000;
        for (int i = 0; i < 2000; i++)
        {
            double slope = Slope(p, at, humidity);
            humidity += step * (slope + Slope(p, at, humidity + (step * slope))) / 2;
        }

        return humidity;
    }

    private static double Slope(double[] p, in StepDrivers at, double humidity)
    {
        double leaves = at.Cover * ((p[0] * at.SunWm2) + (p[1] * (at.SaturatedGm3 - humidity)));
        double exchange = p[2] + (p[3] * at.WindMs) + (at.Vent * (p[4] + (p[5] * at.WindMs)));
        return (leaves - (exchange * (humidity - at.OutsideGm3)) - (p[7] * Math.Max(0, humidity - at.CoverGm3))) / 4;
    }
}
