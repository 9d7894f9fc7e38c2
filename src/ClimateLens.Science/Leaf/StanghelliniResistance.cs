using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Resistances of a leaf to the exchange of heat and vapour.</summary>
/// <remarks>
/// <b>Source:</b> [STANGHELLINI87]; the external resistance from memory, the internal one as re-stated in public code of a greenhouse
/// climate model that cites it, its temperature factor from memory. Measured on tomato; an ornamental may differ by a factor of two.
/// </remarks>
public static class StanghelliniResistance
{
    /// <summary>Resistance to vapour over that to heat in the boundary layer. [1]</summary>
    /// <remarks>From the ratio of the diffusivities of vapour and heat, [STANGHELLINI87], from memory.</remarks>
    public const double VapourToHeat = 0.92;

    internal const double ExternalCoefficient = 1174;
    internal const double SpeedCoefficient = 207;

    /// <summary>External resistance to heat of one side of a leaf. [s/m]</summary>
    /// <param name="leafWidth">Width of the leaf, 0.001 to 0.5. [m]</param>
    /// <param name="leafMinusAir">Leaf temperature minus air temperature, -50 to 50. [K]</param>
    /// <param name="airSpeed">Speed of the air at the leaf, 0.001 to 10. [m/s]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>1174 √L/(L|Δt| + 207 u²)^¼</c>: free and forced convection together.</para>
    /// <para><b>Range:</b> u below 1 m/s. <b>Error:</b> not stated where we saw it; at 0.1 m/s within 3 % of a flat plate in forced
    /// flow (test). Whole-model errors of 20 to 30 % are usual.</para>
    /// </remarks>
    public static SecondPerMetre External(Metre leafWidth, KelvinDifference leafMinusAir, MetrePerSecond airSpeed)
    {
        double width = Guard.Within(leafWidth.Value, 0.001, 0.5, "m", nameof(leafWidth));
        double difference = Math.Abs(Guard.Within(leafMinusAir.Value, -50, 50, "K", nameof(leafMinusAir)));
        double speed = Guard.Within(airSpeed.Value, 0.001, 10, "m/s", nameof(airSpeed));
        double mixing = (width * difference) + (SpeedCoefficient * speed * speed);
        return new(ExternalCoefficient * Math.Sqrt(width) / Math.Sqrt(Math.Sqrt(mixing)));
    }

    /// <summary>Internal (stomatal and cuticular) resistance by light alone. [s/m]</summary>
    /// <param name="absorbed">Short-wave radiation absorbed by a leaf area, 0 to 1500. [W/m²]</param>
    /// <exception cref="ArgumentOutOfRangeException">The radiation is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>82 (I + 4.3)/(I + 0.54)</c>. Dark 653 s/m, 50 W/m² 88 s/m.</remarks>
    public static SecondPerMetre InternalByLight(WattPerSquareMetre absorbed) =>
        new(ByLight(Guard.Within(absorbed.Value, 0, 1500, "W/m²", nameof(absorbed))));

    /// <summary>Internal resistance by light, leaf temperature, carbon dioxide and leaf-to-air deficit. [s/m]</summary>
    /// <param name="absorbed">Short-wave radiation absorbed by a leaf area, 0 to 1500. [W/m²]</param>
    /// <param name="leaf">Leaf temperature, -50 to 60. [°C]</param>
    /// <param name="carbonDioxidePpm">Carbon dioxide, 0 to 5000. [ppm]</param>
    /// <param name="deficit">Leaf-to-air vapour-pressure deficit, 0 to 20. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>82 (I + 4.3)/(I + 0.54)·(1 + 0.023 (t - 24.5)²)·min(1.5, 1 + 6.1e-7 (CO2 - 200)²)·min(5.8, 1 + 4.3e-6 D²)</c>,
    /// D in Pa; at night (I = 0) the last two coefficients are 1.1e-11 and 5.2e-6.
    /// </remarks>
    public static SecondPerMetre Internal(WattPerSquareMetre absorbed, Celsius leaf, double carbonDioxidePpm, KiloPascal deficit)
    {
        double light = Guard.Within(absorbed.Value, 0, 1500, "W/m²", nameof(absorbed));
        double leafC = Guard.Within(leaf.Value, -50, 60, "°C", nameof(leaf));
        double ppm = Guard.Within(carbonDioxidePpm, 0, 5000, "ppm");
        double deficitKPa = Guard.Within(deficit.Value, 0, 20, "kPa", nameof(deficit));
        double carbonDioxide = Math.Min(1.5, 1 + ((light > 0 ? 6.1e-7 : 1.1e-11) * (ppm - 200) * (ppm - 200)));
        return new(ByLight(light) * ByTemperature(leafC) * carbonDioxide * ByDeficit(light, deficitKPa));
    }

    internal static double ByLight(double absorbedWm2) => 82 * (absorbedWm2 + 4.3) / (absorbedWm2 + 0.54);

    internal static double ByTemperature(double leafC) => 1 + (0.023 * (leafC - 24.5) * (leafC - 24.5));

    internal static double ByDeficit(double absorbedWm2, double deficitKPa) =>
        Math.Min(5.8, 1 + ((absorbedWm2 > 0 ? 4.3 : 5.2) * deficitKPa * deficitKPa)); // 1e-6 a Pa² is 1 a kPa²
}
