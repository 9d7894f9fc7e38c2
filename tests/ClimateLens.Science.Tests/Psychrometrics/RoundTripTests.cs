using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using CsCheck;

namespace ClimateLens.Science.Tests.Psychrometrics;

/// <summary>What goes there and back again arrives where it started.</summary>
public class RoundTripTests
{
    private static readonly Gen<(double T, double Rh)> Air = Gen.Select(Gen.Double[-40, 60], Gen.Double[0.5, 100]);

    private static readonly SaturationCurve[] Curves =
    [
        MagnusForm.Buck1981Water, MagnusForm.Wmo8Water, MagnusForm.AerkWater, MagnusForm.Fao56Water,
        MagnusForm.Bolton1980Water, HylandWexler.Water, MagnusForm.Buck1981Ice, MagnusForm.Wmo8Ice, MagnusForm.AerkIce,
        HylandWexler.Ice,
    ];

    private static readonly Gen<SaturationCurve> Curve = Gen.Int[0, Curves.Length - 1].Select(i => Curves[i]);

    private static readonly KiloPascal Pressure = new(101.325);

    [Fact]
    public void Curve_TemperatureOfItsVapourPressure_IsTheTemperature() => Gen.Select(Curve, Gen.Double[-60, 60])
        .Sample((curve, t) => Math.Abs(curve.Temperature(curve.VapourPressure(new(t))).Value - t) < 1e-9);

    [Fact]
    public void Curve_Slope_IsTheDerivative() => Gen.Select(Curve, Gen.Double[-60, 60]).Sample((curve, t) =>
    {
        double difference = (curve.VapourPressureKPa(t + 0.01) - curve.VapourPressureKPa(t - 0.01)) / 0.02;
        return Math.Abs((curve.Slope(new(t)).Value / difference) - 1) < 1e-6;
    });

    [Fact]
    public void RelativeHumidity_ThroughVapourPressure_ComesBack() => Air.Sample((t, rh) => Back(
        rh, RelativeHumidityFrom.VapourPressure(new(t), VapourPressure.FromRelativeHumidity(new(t), new(rh)))));

    [Fact]
    public void RelativeHumidity_ThroughDewPoint_ComesBack() => Air.Sample((t, rh) => Back(
        rh, RelativeHumidityFrom.DewPoint(new(t), DewPoint.FromRelativeHumidity(new(t), new(rh)))));

    [Fact]
    public void RelativeHumidity_ThroughHumidityRatio_ComesBack() => Air.Sample((t, rh) => Back(
        rh, RelativeHumidityFrom.HumidityRatio(new(t), HumidityRatio.FromRelativeHumidity(new(t), new(rh), Pressure), Pressure)));

    [Fact]
    public void RelativeHumidity_ThroughAbsoluteHumidity_ComesBack() => Air.Sample((t, rh) => Back(
        rh, RelativeHumidityFrom.AbsoluteHumidity(new(t), VapourDensity.Absolute(new(t), new(rh)))));

    [Fact]
    public void RelativeHumidity_ThroughFrostPoint_ComesBack() => Gen.Select(Gen.Double[-40, -1], Gen.Double[1, 100]).Sample((t, rh) => Back(
        rh, RelativeHumidityFrom.VapourPressure(
            new(t), VapourPressure.FromFrostPoint(FrostPoint.FromRelativeHumidity(new(t), new(rh))))));

    [Fact]
    public void HumidityRatio_ThroughWetBulb_ComesBack() => Gen.Select(Gen.Double[-20, 60], Gen.Double[0, 100], Gen.Double[80, 105])
        .Where((t, rh, _) => t > 0 || rh < 75) // below 0 °C moister air is supersaturated over the ice bulb
        .Sample((t, rh, p) =>
        {
            Celsius wetBulb = WetBulb.FromRelativeHumidity(new(t), new(rh), new(p));
            double there = HumidityRatio.FromRelativeHumidity(new(t), new(rh), new(p)).Value;
            double back = WetBulb.ToHumidityRatio(new(t), new(Math.Min(t, wetBulb.Value)), new(p)).Value;
            return Math.Abs(back - there) < 1e-8;
        });

    [Fact]
    public void SpecificHumidity_OfHumidityRatio_ComesBack() => Gen.Double[0, 5].Sample(w =>
        Math.Abs(HumidityRatio.FromSpecificHumidity(HumidityRatio.ToSpecificHumidity(new(w))).Value - w) < 1e-12 * (1 + w) * (1 + w));

    private static bool Back(double rh, RelativeHumidity back) => Math.Abs(back.Percent - rh) < 1e-9;
}
