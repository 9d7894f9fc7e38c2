using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Leaf;

/// <summary>What a leaf's balance needs of leaf and pressure and what does not change from step to step.</summary>
internal readonly struct LeafConstants(in LeafTraits traits, double pressureKPa)
{
    /// <summary>Leaf width. [m]</summary>
    public double WidthM { get; } = traits.WidthM;

    /// <summary>ε σ. [W/(m² K⁴)]</summary>
    public double LongWave { get; } = traits.Emissivity * LeafAir.StefanBoltzmann;

    /// <summary>ρ cp times the absolute temperature. [J/m³]</summary>
    public double HeatTimesKelvin { get; } =
        LeafAir.HeatCapacity * LeafAir.DensityKgM3(0, pressureKPa) * Limits.ZeroCelsiusK;

    /// <summary>1/(1174 √L), the boundary layer with the fourth root taken out.</summary>
    public double PerBoundary { get; } = 1 / (StanghelliniResistance.ExternalCoefficient * Math.Sqrt(traits.WidthM));

    /// <summary>1/(γ λ). [kg K/(kPa J)]</summary>
    public double PerGammaTimesLatent { get; } = 1 / LeafAir.GammaKPaPerK(1, pressureKPa);
}
