using ClimateLens.Science.Leaf;
using ClimateLens.Science.Quantities;
using CsCheck;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>What holds for every cover: it lies between inside and outside, and a warmer sky warms cover and leaf.</summary>
public class CoverTemperatureTests
{
    /// <summary>Every kind of cover.</summary>
    internal static readonly Gen<Glazing> Glass = Gen.Int[0, 3].Select(kind =>
        new[] { Glazing.SingleGlass, Glazing.TwinPane, Glazing.ThermicFilm, Glazing.DoubleThermicFilm }[kind]);

    /// <summary>Inside 5 to 30 °C, outside up to 30 K colder, sky up to 30 K colder than that.</summary>
    private static readonly Gen<CoverWeather> Night = Gen.Select(
        Gen.Double[5, 30], Gen.Double[0, 30], Gen.Double[0, 30], Gen.Double[0, 15], Gen.Double[0, 1])
        .Select((inside, colder, sky, wind, screen) => new CoverWeather(inside, inside - colder, inside - colder - sky, wind, 0, screen));

    [Fact]
    public void Solve_AnyNight_LiesBetweenSkyAndHouse() => Gen.Select(Night, Glass).Sample((night, glass) =>
    {
        CoverState cover = CoverTemperature.Solve(night, glass);
        return cover.OuterC >= night.SkyC - 1e-3 && cover.InnerC >= cover.OuterC - 1e-3 && cover.InnerC <= night.InsideC + 1e-3
            && cover.RadiatingC >= night.SkyC - 1e-3 && cover.RadiatingC <= night.InsideC + 1e-3 && cover.HeatLossWm2 >= -1e-3;
    });

    [Fact]
    public void Solve_NoDifferences_IsTheTemperatureOfAll() => Glass.Sample(glass =>
        Math.Abs(CoverTemperature.Solve(new(15, 15, 15, 2, 0, 0.5), glass).RadiatingC - 15) < 1e-4);

    [Fact]
    public void Solve_WarmerSky_NeverColderCoverNorLeaf() => Gen.Select(Night, Glass, Gen.Double[0, 15]).Sample((night, glass, warmer) =>
    {
        double cold = CoverTemperature.Solve(night, glass).RadiatingC;
        double warm = CoverTemperature.Solve(night with { SkyC = night.SkyC + warmer }, glass).RadiatingC;
        return warm >= cold - 1e-3 && LeafC(night, warm) >= LeafC(night, cold) - 1e-3;
    });

    [Fact]
    public void Solve_ScreenThatCloses_WarmsWhatTheCropSees() => Gen.Select(Night, Glass).Sample((night, glass) =>
        CoverTemperature.Solve(night with { ScreenClosed = 1 }, glass).RadiatingC
        >= CoverTemperature.Solve(night with { ScreenClosed = 0 }, glass).RadiatingC - 1e-3);

    [Fact]
    public void Solve_MoreVapourInTheHouse_NeverColderNorOverTheHouse() => Gen.Select(Night, Glass, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((night, glass, a, b) =>
    {
        double saturated = Science.Psychrometrics.SaturationVapourPressure.OverWater(new(night.InsideC)).Value;
        double drier = CoverTemperature.Solve(night with { InsideVapourKPa = saturated * a * b }, glass).RadiatingC;
        double damper = CoverTemperature.Solve(night with { InsideVapourKPa = saturated * a }, glass).RadiatingC;
        return damper >= drier - 1e-3 && damper <= night.InsideC + 1e-3;
    });

    /// <summary>Dew gives the cover 1 to 2 K on a wet night (from memory). By hand: 18 °C and 90 %, glass near 8 °C: 0.78 kPa over saturation, h = 1.7·10^⅓ = 3.7, λ·6.4e-9·h·780 Pa = 45 W/m² over some 25 W/(m² K).</summary>
    [Fact]
    public void Solve_DampHouseUnderColdGlass_IsWarmerByTheHeatOfItsDew()
    {
        CoverWeather dry = new(18, 0, -10, 2, 0, 0);
        double dew = CoverTemperature.Solve(dry with { InsideVapourKPa = 0.9 * 2.064 }, Glazing.SingleGlass).InnerC - CoverTemperature.Solve(dry, Glazing.SingleGlass).InnerC;
        Assert.InRange(dew, 1, 2.5);
    }

    [Fact]
    public void Solve_AirWhoseDewPointIsBelowTheGlass_IsAsWithoutVapour()
    {
        CoverWeather mild = new(18, 14, 10, 2, 0, 0);
        Assert.Equal(CoverTemperature.Solve(mild, Glazing.SingleGlass).InnerC, CoverTemperature.Solve(mild with { InsideVapourKPa = 1.0 }, Glazing.SingleGlass).InnerC, 1e-4);
    }

    [Fact]
    public void Solve_SunOnTheGlass_WarmsItByItsHeatOverWhatItGivesOff()
    {
        CoverWeather dull = new(20, 10, 0, 2, 0, 0);
        double warmer = CoverTemperature.Solve(dull with { AbsorbedWm2 = 30 }, Glazing.SingleGlass).InnerC - CoverTemperature.Solve(dull, Glazing.SingleGlass).InnerC;
        Assert.InRange(warmer, 30 / 25.0, 30 / 12.0); // glass gives off 12 to 25 W/(m² K) by both faces: 5 outside by air, 5 by sky, 2 to 8 inside
    }

    /// <summary>Heat through single glass on a calm cold night: 6 to 9 W/(m² K) is what growers' tables give (from memory), by far the largest loss of a house.</summary>
    [Fact]
    public void Solve_SingleGlass_LosesHeatAsTablesSay()
    {
        CoverState cover = CoverTemperature.Solve(new(18, 0, -10, 4, 0, 0), Glazing.SingleGlass);
        Assert.InRange(cover.HeatLossWm2 / 18, 5, 9);
    }

    [Fact]
    public void SkyTemperature_MoreCloudOrMoisture_NeverColder() => Gen.Select(Gen.Double[-20, 35], Gen.Double[0, 18], Gen.Double[0, 1], Gen.Double[0, 1])
        .Sample((air, depression, cloud, share) =>
        {
            Celsius dew = new(air - depression);
            double clearer = SkyTemperature.FromDewPoint(new(air), dew, cloud * share).Value;
            double cloudier = SkyTemperature.FromDewPoint(new(air), dew, cloud).Value;
            return cloudier >= clearer - 1e-9 && cloudier <= air + 1e-9
                && SkyTemperature.FromDewPoint(new(air), new(air - (share * depression)), cloud).Value >= cloudier - 1e-9;
        });

    /// <summary>The formula of the docstring worked out once by a separate program; at a dew point of 0 °C the emissivity is the 0.711 of [BERDAHL84] itself.</summary>
    [Theory]
    [InlineData(20, 10, 0, 1.8402)]
    [InlineData(10, -10, 0, -17.7151)]
    [InlineData(0, -30, 0, -31.8807)]
    [InlineData(20, 10, 0.5, 9.8957)]
    [InlineData(30, 25, 1, 28.7386)]
    public void SkyTemperature_ByDewPointAndCloud_IsTheFormula(double air, double dewPoint, double cloud, double expected)
        => Assert.Equal(expected, SkyTemperature.FromDewPoint(new(air), new(dewPoint), cloud).Value, 1e-4);

    [Fact]
    public void SkyTemperature_ImpossibleOrNotKnown_IsRefusedOrNotKnown()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SkyTemperature.FromDewPoint(new(10), new(10.1), 0)); // no dew point over the air
        Assert.Throws<ArgumentOutOfRangeException>(() => SkyTemperature.FromDewPoint(new(double.NaN), new(61), 0));
        Assert.True(double.IsNaN(SkyTemperature.FromDewPoint(new(double.NaN), new(10), 0).Value));
        Assert.Equal(-10.1450, SkyTemperature.FromAirTemperature(new(10)).Value, 1e-4); // 0.0552·283.15^1.5 K
    }

    /// <summary>Two formulas of other people agree on a clear sky within the error stated.</summary>
    [Theory]
    [InlineData(0, -5)]
    [InlineData(10, 5)]
    [InlineData(20, 12)]
    public void SkyTemperature_ByDewPointAndByAirAlone_AgreeWithinTheirErrors(double air, double dewPoint) => Assert.Equal(
        SkyTemperature.FromAirTemperature(new(air)).Value, SkyTemperature.FromDewPoint(new(air), new(dewPoint), 0).Value, 6.0);

    private static double LeafC(CoverWeather night, double aboveC) => LeafBalance.Solve(
        new(new(night.InsideC), new(85), 0, new(aboveC), new(night.InsideC), 0.1), LeafTraits.PotPlant, new(3000)).Temperature.Value;
}
