using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Tests.Psychrometrics;

/// <summary>What the forms say of themselves, and that the one asked for is the one used.</summary>
public class SaturationCurveTests
{
    /// <summary>The ranges that the papers state: those named beside each form.</summary>
    public static TheoryData<SaturationCurve, bool, double, double> Ranges => new()
    {
        { MagnusForm.Buck1981Water, false, -20, 50 }, // [BUCK81]
        { MagnusForm.Buck1981Ice, true, -50, 0 }, // [BUCK81]
        { MagnusForm.Wmo8Water, false, -45, 60 }, // [WMO8] annex 4.B
        { MagnusForm.Wmo8Ice, true, -65, 0 }, // [WMO8] annex 4.B
        { MagnusForm.AerkWater, false, -40, 50 }, // [AE96] eq. 21
        { MagnusForm.AerkIce, true, -80, 0 }, // [AE96] eq. 23
        { MagnusForm.Bolton1980Water, false, -30, 35 }, // [BOLTON80] eq. 10
        { MagnusForm.Fao56Water, false, double.NaN, double.NaN }, // [FAO56] states none
        { HylandWexler.Water, false, 0, 200 }, // [HW83]
        { HylandWexler.Ice, true, -100, 0 }, // [HW83]
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public void Curve_Published_NamesItsPhaseAndRange(SaturationCurve curve, bool overIce, double lowestC, double highestC)
        => Assert.Equal((overIce, lowestC, highestC), (curve.OverIce, curve.LowestC, curve.HighestC));

    [Fact]
    public void AnotherIceCurve_IsTheOneUsed()
    {
        KiloPascal wmo = MagnusForm.Wmo8Ice.VapourPressure(new(-10));
        Assert.Equal(-10, FrostPoint.FromVapourPressure(wmo, MagnusForm.Wmo8Ice).Value, 9);
        Assert.NotEqual(-10, FrostPoint.FromVapourPressure(wmo).Value, 9);
        Assert.Equal(wmo.Value, VapourPressure.FromFrostPoint(new(-10), MagnusForm.Wmo8Ice).Value, 12);
        Assert.NotEqual(wmo.Value, VapourPressure.FromFrostPoint(new(-10)).Value, 12);
    }

    [Fact]
    public void HumidityOfSaturatedAir_RoundedUp_Is100Percent_AndMoreIsRefused()
    {
        double saturated = SaturationVapourPressure.OverWater(new(20)).Value;
        Assert.Equal(100, RelativeHumidityFrom.VapourPressure(new(20), new(saturated)).Percent);
        Assert.Equal(100, RelativeHumidityFrom.VapourPressure(new(20), new(saturated * (1 + 0.9e-6))).Percent);
        Assert.Throws<ArgumentOutOfRangeException>(() => RelativeHumidityFrom.VapourPressure(new(20), new(saturated * (1 + 1.1e-6))));
    }

    [Fact]
    public void IceBulb_AboveFreezing_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WmoPsychrometer.VapourPressureIceBulb(new(5), new(0.1), new(101)));
        Assert.InRange(WmoPsychrometer.VapourPressureIceBulb(new(1), new(0), new(101)).Value, 0.5, 0.62);
    }

    [Fact]
    public void WetBulbBelowFreezing_AnotherIceCurve_IsTheOneUsed()
    {
        double usual = WetBulb.FromRelativeHumidity(new(-5), new(60), new(101)).Value;
        double other = WetBulb.FromRelativeHumidity(new(-5), new(60), new(101), iceCurve: MagnusForm.AerkIce).Value;
        Assert.InRange(Math.Abs(usual - other), 1e-4, 0.01); // the curves agree to a few parts in a thousand
    }
}
