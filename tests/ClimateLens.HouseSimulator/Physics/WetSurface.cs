namespace ClimateLens.HouseSimulator.Physics;

/// <summary>A surface that gives water to the air or takes dew from it.</summary>
public sealed class WetSurface(bool inCanopy)
{
    /// <summary>Whether it faces the air within the canopy; else the air of the house.</summary>
    public bool InCanopy { get; } = inCanopy;

    /// <summary>Vapour density at the surface, saturated at its temperature. [kg/m³]</summary>
    public double DensityKgM3 { get; set; }

    /// <summary>Conductance while it evaporates. [m/s]</summary>
    public double Evaporating { get; set; }

    /// <summary>Conductance while dew forms on it. [m/s]</summary>
    public double Condensing { get; set; }

    /// <summary>Water that can evaporate from it within the step. [kg/m²]</summary>
    public double StoreKgM2 { get; set; }

    /// <summary>Water given to the air in the step just solved; negative: dew. [kg/(m² s)]</summary>
    public double FluxKgM2S { get; internal set; }

    internal double Conductance { get; set; }

    internal bool Emptied { get; set; }
}
