using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Leaf;

/// <summary>The terms of a leaf's balance as functions of its difference to the air; the careful version, for single leaves.</summary>
internal readonly struct LeafTerms
{
    private readonly LeafSurroundings _around;
    private readonly LeafTraits _traits;
    private readonly SaturationCurve _curve;
    private readonly double _surfaceSm;
    private readonly double _heatPerM3K; // ρ cp [J/(m³ K)]
    private readonly double _gammaKPaPerK;
    private readonly double _vapourPressureKPa;

    public LeafTerms(LeafSurroundings around, LeafTraits traits, double surfaceSm, double pressureKPa, SaturationCurve curve)
    {
        (_around, _traits, _surfaceSm, _curve) = (around, traits, surfaceSm, curve);
        double airC = around.Air.Value;
        _heatPerM3K = LeafAir.DensityKgM3(airC, pressureKPa) * LeafAir.HeatCapacity;
        _gammaKPaPerK = LeafAir.GammaKPaPerK(LeafAir.LatentHeat(airC), pressureKPa);
        _vapourPressureKPa = curve.VapourPressureKPa(airC) * around.Humidity.Percent / 100;
        Known = around.Known && !double.IsNaN(surfaceSm + pressureKPa);
    }

    public bool Known { get; }

    /// <summary>Energy gained less energy given off; falls as the leaf gets warmer. [W/m²]</summary>
    public double GainWm2(double offsetK) => RadiationWm2(offsetK) - SensibleWm2(offsetK) - LatentWm2(offsetK);

    public LeafState State(double offsetK) => new(
        new(_around.Air.Value + offsetK), new(offsetK), SensibleWm2(offsetK), LatentWm2(offsetK), RadiationWm2(offsetK));

    /// <summary>The root of the balance made linear about the air, with the boundary layer of an earlier guess. [K]</summary>
    public double LinearOffsetK(double guessK)
    {
        double airC = _around.Air.Value;
        double kelvin = airC + Limits.ZeroCelsiusK;
        double heat = 2 * _heatPerM3K / ExternalSm(guessK);
        double longWave = 8 * _traits.Emissivity * LeafAir.StefanBoltzmann * kelvin * kelvin * kelvin;
        double slope = _curve.SlopeKPaPerK(airC);
        double deficit = _curve.VapourPressureKPa(airC) - _vapourPressureKPa;
        double vapour = VapourConductance(guessK, _surfaceSm);
        double offsetK = (RadiationWm2(0) - (vapour * deficit)) / (heat + longWave + (vapour * slope));
        if (deficit + (slope * offsetK) >= 0)
        {
            return offsetK;
        }

        vapour = VapourConductance(guessK, 0);
        return (RadiationWm2(0) - (vapour * deficit)) / (heat + longWave + (vapour * slope));
    }

    private double RadiationWm2(double offsetK)
    {
        double leaf = Fourth(_around.Air.Value + offsetK);
        double seen = Fourth(_around.Above.Value) + Fourth(_around.Below.Value);
        return _around.AbsorbedWm2 + (_traits.Emissivity * LeafAir.StefanBoltzmann * (seen - (2 * leaf)));
    }

    private double SensibleWm2(double offsetK) => 2 * _heatPerM3K * offsetK / ExternalSm(offsetK);

    private double LatentWm2(double offsetK)
    {
        double deficit = _curve.VapourPressureKPa(_around.Air.Value + offsetK) - _vapourPressureKPa;
        return VapourConductance(offsetK, deficit < 0 ? 0 : _surfaceSm) * deficit;
    }

    private double VapourConductance(double offsetK, double surfaceSm) =>
        2 * _heatPerM3K / (_gammaKPaPerK * ((StanghelliniResistance.VapourToHeat * ExternalSm(offsetK)) + surfaceSm));

    private double ExternalSm(double offsetK) =>
        StanghelliniResistance.External(new(_traits.WidthM), new(Math.Clamp(offsetK, -50, 50)), new(_around.AirSpeedMs)).Value;

    private static double Fourth(double temperatureC)
    {
        double square = (temperatureC + Limits.ZeroCelsiusK) * (temperatureC + Limits.ZeroCelsiusK);
        return square * square;
    }
}
