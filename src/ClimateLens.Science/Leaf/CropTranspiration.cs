using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Vapour given off by a whole crop, taken for one big leaf.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>λE = (s Rn + 2 L ρ cp D/r_e)/(s + γ (1 + r_i/r_e))</c> per ground area. <b>Source:</b> [STANGHELLINI87], derived from the leaf's balance.</para>
/// <para><b>Error:</b> 20 to 30 % with resistances of another crop (from memory).</para>
/// </remarks>
public static class CropTranspiration
{
    /// <summary>Latent heat flux of a crop, per ground area. [W/m²]</summary>
    /// <param name="air">Air temperature, -30 to 60. [°C]</param>
    /// <param name="deficit">Vapour-pressure deficit of the air, 0 to 20. [kPa]</param>
    /// <param name="netRadiation">Net radiation of the crop, per ground area, -500 to 1500. [W/m²]</param>
    /// <param name="leafArea">Leaf area over ground area, 0 to 20. [1]</param>
    /// <param name="external">External resistance of one side, above 0 to 10000. [s/m]</param>
    /// <param name="inner">Internal resistance of one side, 0 to 1e6. [s/m]</param>
    /// <param name="pressure">Air pressure; 101.325 when left out. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static WattPerSquareMetre LatentHeat(
        Celsius air, KiloPascal deficit, WattPerSquareMetre netRadiation, double leafArea, SecondPerMetre external, SecondPerMetre inner,
        KiloPascal? pressure = null, SaturationCurve? curve = null)
    {
        double airC = Guard.Within(air.Value, -30, 60, "°C", nameof(air));
        double deficitKPa = Guard.Within(deficit.Value, 0, 20, "kPa", nameof(deficit));
        double net = Guard.Within(netRadiation.Value, -500, 1500, "W/m²", nameof(netRadiation));
        double leaves = Guard.Within(leafArea, 0, 20, "(leaf area index)");
        double boundary = Guard.AboveUpTo(external.Value, 0, 10000, "s/m", nameof(external));
        double stomata = Guard.Within(inner.Value, 0, 1e6, "s/m", nameof(inner));
        double pressureKPa = Limits.AirPressure(pressure ?? new(LeafAir.StandardPressureKPa));
        double slope = VapourPressure.CurveOr(curve).SlopeKPaPerK(airC);
        double heat = LeafAir.DensityKgM3(airC, pressureKPa) * LeafAir.HeatCapacity;
        double gamma = LeafAir.GammaKPaPerK(LeafAir.LatentHeat(airC), pressureKPa);
        return new(((slope * net) + (2 * leaves * heat * deficitKPa / boundary)) / (slope + (gamma * (1 + (stomata / boundary)))));
    }

    /// <summary>A latent heat flux as a depth of water. [mm/h]</summary>
    /// <param name="air">Temperature of the water, -30 to 60. [°C]</param>
    /// <param name="latentHeat">Latent heat flux, -1500 to 1500. [W/m²]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static double MmPerHour(Celsius air, WattPerSquareMetre latentHeat) =>
        3600 * Guard.Within(latentHeat.Value, -1500, 1500, "W/m²", nameof(latentHeat))
        / LeafAir.LatentHeat(Guard.Within(air.Value, -30, 60, "°C", nameof(air)));
}
