using ClimateLens.Science.Sun;
using CsCheck;

namespace ClimateLens.Science.Tests.Sun;

public class SkyTests
{
    [Theory]
    [InlineData(-20, 0)]
    [InlineData(-0.05, 0)]
    [InlineData(-0.001, 0)]
    [InlineData(5, 48.6298687941956)]
    [InlineData(10, 135.741748091813)]
    [InlineData(30, 487.894132885425)]
    [InlineData(50, 778.766689344363)]
    [InlineData(90, 1035.09203253450)]
    public void ClearSkyRadiation_PublishedElevations_GivePublishedRadiation(double elevationDeg, double expected) =>
        // pvlib tests/test_clearsky.py, test_haurwitz.
        Assert.Equal(expected, ClearSkyRadiation.GlobalWm2(elevationDeg), 8);

    [Fact]
    public void ClearSkyRadiation_HigherSun_IsStrongerAndBelowTheSolarConstant() =>
        Gen.Select(Gen.Double[0.5, 89], Gen.Double[0.01, 1]).Sample((h, more) =>
            ClearSkyRadiation.GlobalWm2(h + more) > ClearSkyRadiation.GlobalWm2(h)
            && ClearSkyRadiation.GlobalWm2(h) < 1361 * Math.Sin(h * Math.PI / 180));

    [Fact]
    public void AtmosphericRefraction_SolarPositionExample_IsThePublishedOne() =>
        // Reda and Andreas 2004, example at 820 hPa and 11 °C: true elevation 39.872046°, apparent 39.888378° (from memory).
        Assert.Equal(39.888378 - 39.872046, AtmosphericRefraction.Deg(39.872046, new(82.0), new(11)), 4);

    [Theory]
    [InlineData(0, 0.48)]
    [InlineData(90, 0)]
    [InlineData(-5, 0)]
    public void AtmosphericRefraction_EndsOfTheSky_AreSensible(double elevationDeg, double expected) =>
        // At a true elevation of 0 the sun stands 29' high: Meeus 1998, chapter 16 (from memory).
        Assert.Equal(expected, AtmosphericRefraction.Deg(elevationDeg, new(101.0), new(10)), 2);

    [Fact]
    public void Refraction_SunNotSeen_IsNone()
    {
        Assert.Equal(0, AtmosphericRefraction.Deg(-1.001, new(101), new(10)));
        Assert.Equal(0, AtmosphericRefraction.Deg(-8, new(101), new(10)));
        Assert.InRange(AtmosphericRefraction.Deg(-1, new(101), new(10)), 0.5, 1);
    }

    /// <summary>[MEEUS98] examples 25.a (declination) and 28.b (equation of time, 13 min 42.7 s), 1992 October 13.0; figures from memory.</summary>
    [Fact]
    public void SunCoordinates_ExampleOfMeeus_AreHisToTheLastPlaces()
    {
        SunCoordinates sun = SunCoordinates.At((2448908.5 - 2440587.5) * 86400);
        Assert.Equal(-7.78507, sun.DeclinationRad * 180 / Math.PI, 1e-5);
        Assert.Equal(13 + (42.7 / 60), sun.EquationOfTimeMin, 0.01);
    }
}
