using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Resistance of a dry leaf's surface to vapour, night and day without a jump between.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>1/r_s = 1/r_night + max(0, 1/r_i(I) - 1/r_i(0))</c>, r_i by light, leaf temperature (taken as that of the air) and
/// deficit of the air after [STANGHELLINI87]; carbon dioxide left out.</para>
/// <para><b>What we changed:</b> the dark value of the tomato is replaced by that of the crop ([SEGINER90]), and light opens the
/// stomata from there. <b>Error:</b> a factor of two either way on another crop; at night it moves the leaf by under 0.2 K.</para>
/// </remarks>
public static class SurfaceResistance
{
    private static readonly double DarkMs = 1 / StanghelliniResistance.ByLight(0);

    /// <summary>Resistance of one side's surface to vapour. [s/m]</summary>
    /// <param name="traits">What the leaf is like.</param>
    /// <param name="absorbed">Short-wave radiation absorbed by a leaf area, 0 to 1500. [W/m²]</param>
    /// <param name="air">Air temperature, -30 to 60. [°C]</param>
    /// <param name="deficit">Vapour-pressure deficit of the air, 0 to 20. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static SecondPerMetre OfDryLeaf(LeafTraits traits, WattPerSquareMetre absorbed, Celsius air, KiloPascal deficit) => new(Sm(
        traits.Checked().NightResistanceSm,
        Guard.Within(absorbed.Value, 0, 1500, "W/m²", nameof(absorbed)),
        Guard.Within(air.Value, -30, 60, "°C", nameof(air)),
        Guard.Within(deficit.Value, 0, 20, "kPa", nameof(deficit))));

    internal static double Sm(double nightSm, double absorbedWm2, double airC, double deficitKPa) =>
        1 / ConductanceMs(1 / nightSm, absorbedWm2, airC, deficitKPa);

    /// <summary>The same as a conductance, for whole columns. [m/s]</summary>
    internal static double ConductanceMs(double nightMs, double absorbedWm2, double airC, double deficitKPa)
    {
        if (absorbedWm2 <= 0)
        {
            return double.IsNaN(airC + deficitKPa) ? double.NaN : nightMs;
        }

        double closing = StanghelliniResistance.ByTemperature(airC) * StanghelliniResistance.ByDeficit(absorbedWm2, deficitKPa);
        return nightMs + (((1 / StanghelliniResistance.ByLight(absorbedWm2)) - DarkMs) / closing);
    }
}
