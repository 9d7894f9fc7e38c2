using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>A leaf in balance with its surroundings.</summary>
/// <param name="Temperature">Leaf temperature. [°C]</param>
/// <param name="Offset">Leaf minus air temperature. [K]</param>
/// <param name="Sensible">Heat given to the air by both sides of a leaf area. [W/m²]</param>
/// <param name="Latent">Heat carried off by vapour from both sides of a leaf area; negative where dew forms. [W/m²]</param>
/// <param name="NetRadiation">Short and long wave taken up less given off, both sides of a leaf area. [W/m²]</param>
public readonly record struct LeafState(
    Celsius Temperature, KelvinDifference Offset, double Sensible, double Latent, double NetRadiation)
{
    internal static LeafState Unknown { get; } =
        new(new(double.NaN), new(double.NaN), double.NaN, double.NaN, double.NaN);
}
