using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>The radiating temperature over a leaf at which it would stand at a given difference to the air in the dark, dry and without transpiration.</summary>
/// <remarks>
/// <para><b>Formula:</b> the balance of <see cref="LeafBalance"/> solved for the upper side: <c>T_above⁴ = 2 T_l⁴ - T_a⁴ + 2 ρ cp (T_l - T_a)/(r_e ε σ)</c>.</para>
/// <para>With it, an assumed difference of a dry leaf carries over to one that is wet, or on which dew forms, which stands elsewhere. <b>Source,
/// range, error:</b> those of the balance; exact to its rounding (RadiatingForOffsetTests).</para>
/// </remarks>
public static class RadiatingForOffset
{
    /// <summary>That radiating temperature. [°C]</summary>
    /// <param name="air">Air at the leaf, -30 to 60. [°C]</param>
    /// <param name="leafMinusAir">Difference of the dry leaf, -10 to 10. [K]</param>
    /// <param name="airSpeed">Air speed at the leaf, 0.001 to 10. [m/s]</param>
    /// <param name="traits">What the leaf is like.</param>
    /// <param name="pressure">Air pressure; 101.325 when left out. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static Celsius Above(Celsius air, KelvinDifference leafMinusAir, MetrePerSecond airSpeed, LeafTraits traits, KiloPascal? pressure = null)
    {
        double airC = Guard.Within(air.Value, -30, 60, "°C", nameof(air));
        double offsetK = Guard.Within(leafMinusAir.Value, -10, 10, "K", nameof(leafMinusAir));
        double speed = Guard.Within(airSpeed.Value, 0.001, 10, "m/s", nameof(airSpeed));
        LeafTraits leaf = traits.Checked();
        return new(AboveC(airC, offsetK, speed, leaf, Limits.AirPressure(pressure ?? new(LeafAir.StandardPressureKPa))));
    }

    /// <summary>By how much the radiating temperature over a crop changes for every kelvin that its mean leaf, dry and in the dark, is warmer. [1]</summary>
    /// <param name="air">Air at the leaf, -30 to 60. [°C]</param>
    /// <param name="leafMinusAir">Difference at which it is taken, -10 to 10. [K]</param>
    /// <param name="airSpeed">Air speed at the leaf, 0.001 to 10. [m/s]</param>
    /// <param name="openShare">Share of a leaf side's view that no other leaf takes, above 0 to 1. [1]</param>
    /// <param name="traits">What the leaf is like.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>2 + 2 ρ cp/(r_e·4 ε σ s T³)</c>, the balance made linear with r_e held. An error of the leaf that comes of heat is carried over with it to a leaf that is wet, which moves less.</remarks>
    public static double PerLeafK(Celsius air, KelvinDifference leafMinusAir, MetrePerSecond airSpeed, double openShare, LeafTraits traits)
    {
        double kelvin = Guard.Within(air.Value, -30, 60, "°C", nameof(air)) + Limits.ZeroCelsiusK;
        double longWave = 4 * Guard.AboveUpTo(openShare, 0, 1, "(share)") * traits.Checked().Emissivity * LeafAir.StefanBoltzmann * kelvin * kelvin * kelvin;
        double resistance = StanghelliniResistance.External(new(traits.WidthM), leafMinusAir, airSpeed).Value;
        return 2 + (2 * LeafAir.DensityKgM3(air.Value, LeafAir.StandardPressureKPa) * LeafAir.HeatCapacity / (resistance * longWave));
    }

    private static double AboveC(double airC, double offsetK, double speedMs, in LeafTraits leaf, double pressureKPa)
    {
        double resistance = StanghelliniResistance.External(new(leaf.WidthM), new(offsetK), new(speedMs)).Value;
        double convected = 2 * LeafAir.DensityKgM3(airC, pressureKPa) * LeafAir.HeatCapacity * offsetK / resistance;
        double above = (2 * Fourth(airC + offsetK)) - Fourth(airC) + (convected / (leaf.Emissivity * LeafAir.StefanBoltzmann));
        return Math.Sqrt(Math.Sqrt(Math.Max(0, above))) - Limits.ZeroCelsiusK;
    }

    private static double Fourth(double temperatureC)
    {
        double kelvin = temperatureC + Limits.ZeroCelsiusK;
        return kelvin * kelvin * (kelvin * kelvin);
    }
}
