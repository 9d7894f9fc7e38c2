using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Tests.Psychrometrics;

public class VapourDensityTests
{
    [Fact]
    public void Factor_AgainstMolarMassOverGasConstant_IsWithin0Point003Percent()
    {
        // CODATA 2018 gas constant and the molar mass of water, 18.015268 g/mol (IAPWS).
        double expected = 1000 * 18.015268 / 8.314462618;
        Assert.InRange(VapourDensity.GramKelvinPerCubicMetreKPa / expected, 1, 1.00003);
    }

    [Fact]
    public void DewPointMargin_SurfaceAboveDewPoint_IsTheDifference() =>
        Assert.Equal(1.5, DewPoint.Margin(new(17.5), new(16)).Value, 12);
}
