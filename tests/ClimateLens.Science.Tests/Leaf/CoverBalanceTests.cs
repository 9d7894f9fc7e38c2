using ClimateLens.Science.Leaf;
using ClimateLens.Science.Psychrometrics;
using CsCheck;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>
/// The cover's answer put back into the formulas of [BOT83], [DEZWART96] and [INCROPERA07], written here once more and without resistances in a row:
/// what passes from the house to the innermost face must pass the gap and the wall, and go to the outside air and the sky.
/// </summary>
public class CoverBalanceTests
{
    private static readonly Gen<Glazing> Glass = CoverTemperatureTests.Glass;

    private static readonly Gen<CoverWeather> Night = Gen.Select(
        Gen.Double[5, 30], Gen.Double[1, 30], Gen.Double[1, 30], Gen.Double[0, 15], Gen.Double[0, 40], Gen.Double[0, 1])
        .Select((inside, colder, sky, wind, sun, damp) => new CoverWeather(inside, inside - colder, inside - colder - sky, wind, sun, 0)
        {
            InsideVapourKPa = damp * SaturationVapourPressure.OverWater(new(inside)).Value,
        });

    [Fact]
    public void Solve_OpenHouse_PassesOnWhatItTakes() => Gen.Select(Night, Glass).Sample((night, glass) =>
    {
        CoverState at = CoverTemperature.Solve(night, glass);
        return Near(at.HeatLossWm2, IntoFace(night, at.InnerC, glass.Emissivity)) && Near(at.HeatLossWm2, ThroughWall(at, glass))
            && Near(at.HeatLossWm2 + night.AbsorbedWm2, Outward(night, at.OuterC, glass)) && double.IsNaN(at.ScreenC);
    });

    [Fact]
    public void Solve_ClosedScreen_PassesOnWhatItTakes() => Gen.Select(Night, Glass).Sample((night, glass) =>
    {
        CoverState at = CoverTemperature.Solve(night with { ScreenClosed = 1 }, glass);
        double gap = (Convection(at.ScreenC - at.InnerC) * (at.ScreenC - at.InnerC)) + Radiation(Planes(0.8, glass.Emissivity), at.ScreenC, at.InnerC);
        return Near(at.HeatLossWm2, IntoFace(night, at.ScreenC, 0.8)) && Near(at.HeatLossWm2, gap) && Near(at.HeatLossWm2, ThroughWall(at, glass))
            && Near(at.HeatLossWm2 + night.AbsorbedWm2, Outward(night, at.OuterC, glass)) && Near(Fourth(at.RadiatingC), Fourth(at.ScreenC));
    });

    [Fact]
    public void Solve_FilmThatLetsRadiationThrough_ShowsThatShareOfTheSky() => Gen.Select(Night, Glass).Sample((night, glass) =>
    {
        CoverState at = CoverTemperature.Solve(night, glass);
        double through = glass.LongWaveTransmission;
        return Near(Fourth(at.RadiatingC), ((1 - through) * Fourth(at.InnerC)) + (through * Fourth(night.SkyC)));
    });

    [Fact]
    public void Solve_ScreenPartlyClosed_IsBothByTheirShares() => Gen.Select(Night, Glass, Gen.Double[0.01, 0.99]).Sample((night, glass, share) =>
    {
        CoverState open = CoverTemperature.Solve(night, glass), closed = CoverTemperature.Solve(night with { ScreenClosed = 1 }, glass);
        CoverState at = CoverTemperature.Solve(night with { ScreenClosed = share }, glass);
        return Near(Mixed(Fourth(open.RadiatingC), Fourth(closed.RadiatingC)), Fourth(at.RadiatingC)) && Near(Mixed(open.HeatLossWm2, closed.HeatLossWm2), at.HeatLossWm2)
            && Math.Abs(Mixed(open.OuterC, closed.OuterC) - at.OuterC) < 0.01 && Math.Abs(Mixed(open.InnerC, closed.InnerC) - at.InnerC) < 0.01 && at.ScreenC == closed.ScreenC;

        double Mixed(double first, double second) => first + (share * (second - first));
    });

    /// <summary>Each step starts where the one before ended; that must not show, nor may a screen that opens and closes, nor a step that is not known.</summary>
    [Fact]
    public void RadiatingC_WholeColumns_AreTheMomentsOneByOne() => Gen.Select(Night.Array[30], Gen.Int[0, 2].Array[30], Glass).Sample((nights, screens, glass) =>
    {
        CoverWeather[] weather = [.. nights.Zip(screens, (night, screen) => night with { ScreenClosed = screen / 2.0 })];
        weather[7] = weather[7] with { SkyC = double.NaN };
        weather[8] = weather[8] with { WindMs = 61 }; // impossible in one step of a column: not known
        double[] result = new double[weather.Length];
        CoverTemperature.RadiatingC(weather, glass, result);
        return double.IsNaN(result[7]) && double.IsNaN(result[8])
            && Enumerable.Range(0, weather.Length).Where(i => i is not (7 or 8)).All(i => Math.Abs(result[i] - CoverTemperature.Solve(weather[i], glass).RadiatingC) < 0.1);
    });

    [Fact]
    public void RadiatingC_OfAnotherLength_IsRefused() =>
        Assert.Throws<ArgumentException>(() => CoverTemperature.RadiatingC(new CoverWeather[3], Glazing.SingleGlass, new double[2]));

    /// <summary>The wind's side of the balance by hand: 10 m/s gives 2.5·10^0.8 = 15.77 W/(m² K), 3 m/s 2.8 + 3.6 = 6.4; sky and outside alike, so that only they count with 4 ε σ T³.</summary>
    [Theory]
    [InlineData(10, 15.774)]
    [InlineData(3, 6.4)]
    [InlineData(0, 2.8)]
    public void Solve_OutsideFace_GivesOffByTheWind(double wind, double perKelvin)
    {
        CoverState at = CoverTemperature.Solve(new(20, 5, 5, wind, 0, 0), Glazing.SingleGlass);
        double radiation = Radiation(0.84, at.OuterC, 5);
        Assert.Equal(perKelvin, (at.HeatLossWm2 - radiation) / (at.OuterC - 5), 0.01);
    }

    private static double IntoFace(CoverWeather w, double faceC, double emissivity)
    {
        double convection = Convection(w.InsideC - faceC);
        double overPa = 1000 * (w.InsideVapourKPa - SaturationVapourPressure.OverWater(new(faceC)).Value);
        double dew = LeafAir.LatentHeatJKg(new(faceC)) * 6.4e-9 * convection * Math.Max(0, overPa);
        return (convection * (w.InsideC - faceC)) + Radiation(Planes(0.95, emissivity), w.InsideC, faceC) + dew;
    }

    private static double ThroughWall(CoverState at, Glazing glass)
        => double.IsInfinity(glass.ConductanceWm2K) ? Math.Abs(at.InnerC - at.OuterC) < 1e-4 ? at.HeatLossWm2 : double.NaN : glass.ConductanceWm2K * (at.InnerC - at.OuterC);

    private static double Outward(CoverWeather w, double outerC, Glazing glass)
    {
        double wind = w.WindMs < 4 ? 2.8 + (1.2 * w.WindMs) : 2.5 * Math.Exp(0.8 * Math.Log(w.WindMs));
        return (wind * (outerC - w.OutsideC)) + Radiation(glass.Emissivity, outerC, w.SkyC);
    }

    private static double Convection(double differenceK) => Math.Max(0.3, 1.7 * Math.Pow(Math.Abs(differenceK), 1 / 3.0));

    private static double Planes(double first, double second) => first * second / (first + second - (first * second));

    private static double Radiation(double emissivity, double firstC, double secondC) => emissivity * (Fourth(firstC) - Fourth(secondC));

    /// <summary>σT⁴. [W/m²]</summary>
    private static double Fourth(double temperatureC) => 5.670374e-8 * Math.Pow(temperatureC + 273.15, 4);

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) < 1; // W/m², of up to 300: a cover under dew is now and then settled to no better than 0.01 to 0.1 K
}
