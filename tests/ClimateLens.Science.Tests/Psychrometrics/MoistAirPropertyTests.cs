using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.References;
using CsCheck;

namespace ClimateLens.Science.Tests.Psychrometrics;

/// <summary>What holds for all moist air, whatever the coefficients.</summary>
public class MoistAirPropertyTests
{
    private static readonly Gen<(double T, double Rh)> Air = Gen.Select(Gen.Double[-40, 60], Gen.Double[0.5, 100]);

    private static readonly KiloPascal Pressure = new(101.325);

    [Fact]
    public void DewPoint_AnyAir_IsNotAboveTheTemperature() => Air.Sample((t, rh) => Td(t, rh) <= t);

    [Fact]
    public void DewPoint_SaturatedAir_IsTheTemperature() => Gen.Double[-40, 60].Sample(t =>
        Td(t, 100) <= t && t - Td(t, 100) < 1e-12);

    [Fact]
    public void DewPoint_MoisterAir_IsHigher() => Gen.Select(Gen.Double[-40, 60], Gen.Double[0.5, 99], Gen.Double[0.01, 1])
        .Sample((t, rh, more) => Td(t, rh + more) > Td(t, rh));

    [Fact]
    public void SaturationVapourPressure_WarmerAir_IsHigher() => Gen.Select(Gen.Double[-60, 60], Gen.Double[0.01, 20])
        .Sample((t, more) => MagnusForm.Buck1981Water.VapourPressureKPa(t + more) > MagnusForm.Buck1981Water.VapourPressureKPa(t)
            && HylandWexler.Water.VapourPressureKPa(t + more) > HylandWexler.Water.VapourPressureKPa(t));

    [Fact]
    public void SaturationVapourPressure_BelowZero_IsLowerOverIce() => Gen.Double[-50, -0.1].Sample(t =>
        SaturationVapourPressure.OverIce(new(t)).Value < SaturationVapourPressure.OverWater(new(t)).Value);

    [Fact]
    public void VapourPressureDeficit_AnyAir_IsNotNegative() => Air.Sample((t, rh) =>
        VapourPressureDeficit.OfAir(new(t), new(rh)).Value >= 0);

    [Fact]
    public void VapourPressureDeficit_LeafAtAirTemperature_IsThatOfTheAir() => Air.Sample((t, rh) => Math.Abs(
        VapourPressureDeficit.LeafToAir(new(t), new(t), new(rh)).Value - VapourPressureDeficit.OfAir(new(t), new(rh)).Value) < 1e-12);

    [Fact]
    public void LeafToAir_LeafBelowTheDewPoint_IsNegative() => Gen.Select(Gen.Double[0, 40], Gen.Double[20, 100], Gen.Double[0.01, 5])
        .Sample((t, rh, colder) => VapourPressureDeficit.LeafToAir(new(Td(t, rh) - colder), new(t), new(rh)).Value < 0);

    [Fact]
    public void AbsoluteHumidityAndDeficit_AnyAir_AddUpToSaturation() => Air.Sample((t, rh) => Math.Abs(
        VapourDensity.Absolute(new(t), new(rh)).Value + VapourDensity.Deficit(new(t), new(rh)).Value
        - VapourDensity.Absolute(new(t), new(100)).Value) < 1e-12 * 200);

    [Fact]
    public void FrostPoint_BelowZero_IsAboveTheDewPoint() => Gen.Select(Gen.Double[-40, -1], Gen.Double[5, 100])
        .Sample((t, rh) => FrostPoint.FromRelativeHumidity(new(t), new(rh)).Value > Td(t, rh));

    [Fact]
    public void WetBulb_AnyAir_LiesBetweenDewPointAndTemperature() => Gen.Select(Gen.Double[0, 60], Gen.Double[0.5, 100])
        .Sample((t, rh) => WetBulbC(t, rh) <= t && WetBulbC(t, rh) >= Td(t, rh) - 1e-6);

    [Fact]
    public void WetBulb_AgainstStullsFit_IsWithinItsPublishedErrorUpTo35C() => Gen.Select(Gen.Double[5, 35], Gen.Double[20, 99])
        .Sample((t, rh) => Stull2011.WetBulbC(t, rh) - WetBulbC(t, rh) is > -1.0 and < 0.65);

    [Fact]
    public void WetBulb_DefaultCurve_IsWithin0Point03KOfHylandWexler() => Gen.Select(Gen.Double[5, 50], Gen.Double[50, 100])
        .Sample((t, rh) => Math.Abs(WetBulbC(t, rh) - WetBulb.FromRelativeHumidity(
            new(t), new(rh), Pressure, HylandWexler.Water, HylandWexler.Ice).Value) < 0.03);

    [Fact]
    public void MoistAir_IsLighterAndRicherThanDryAir() => Gen.Select(Gen.Double[0, 50], Gen.Double[5, 100]).Sample((t, rh) =>
        AirDensity.FromRelativeHumidity(new(t), new(rh), Pressure).Value < AirDensity.FromHumidityRatio(new(t), new(0), Pressure).Value
        && MoistAirEnthalpy.FromRelativeHumidity(new(t), new(rh), Pressure).Value > 1.006 * t);

    [Fact]
    public void MoistAirDensity_EqualsDryAirPlusVapour() => Gen.Select(Gen.Double[0, 50], Gen.Double[0, 100]).Sample((t, rh) =>
    {
        // Dalton: both gases fill the volume at their own pressure. The rounded constants of the source leave 0.01 %.
        double e = VapourPressure.FromRelativeHumidity(new(t), new(rh)).Value;
        double sum = ((Pressure.Value - e) / (0.287042 * (t + 273.15))) + (VapourDensity.Absolute(new(t), new(rh)).Value / 1000);
        return Math.Abs((AirDensity.FromRelativeHumidity(new(t), new(rh), Pressure).Value / sum) - 1) < 1e-4;
    });

    [Fact]
    public void Psychrometer_LessVentilation_ReadsDrier() => Gen.Select(Gen.Double[10, 40], Gen.Double[0.1, 4]).Sample((t, depression) =>
    {
        double E(BulbVentilation v) => Psychrometer.VapourPressure(new(t), new(t - depression), Pressure, v).Value;
        return E(BulbVentilation.Aspirated) > E(BulbVentilation.Natural) && E(BulbVentilation.Natural) > E(BulbVentilation.Unventilated);
    });

    [Fact]
    public void AirPressure_BothAtmospheres_AreWithinHalfAPercentUpTo2000M() => Gen.Double[0, 2000].Sample(z =>
        Math.Abs((AirPressure.AtElevationFao56(new(z)).Value / AirPressure.AtElevation(new(z)).Value) - 1) < 0.005);

    private static double Td(double t, double rh) => DewPoint.FromRelativeHumidity(new(t), new(rh)).Value;

    private static double WetBulbC(double t, double rh) => WetBulb.FromRelativeHumidity(new(t), new(rh), Pressure).Value;
}
