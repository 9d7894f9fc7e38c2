using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Energy balance of one leaf, per leaf area (one side counted, both sides exchange).</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>S + ε σ (T_above⁴ + T_below⁴ - 2 T_l⁴) = 2 ρ cp (T_l - T_a)/r_e + 2 (ρ cp/γ)(es(T_l) - e)/(0.92 r_e + r_s)</c>;
/// r_s falls away where the leaf is wet or dew forms (es(T_l) below e).</para>
/// <para><b>Source:</b> the balance as in [JONES92] (from memory), r_e of [STANGHELLINI87]. <b>Range:</b> air -30 to 60 °C. <b>Error:</b>
/// within its inputs the solution is exact to 1e-6 K; air speed and radiating temperature decide: see docs/science/leaf.md.</para>
/// </remarks>
public static class LeafBalance
{
    private const double WidestSearchK = 60;

    /// <summary>Balance solved in full by bisection.</summary>
    /// <param name="around">What surrounds the leaf.</param>
    /// <param name="traits">What the leaf is like.</param>
    /// <param name="surface">Resistance of one side's surface to vapour: 0 for a wet leaf, infinity for none. [s/m]</param>
    /// <param name="pressure">Air pressure; 101.325 when left out. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <returns>The leaf in balance; all NaN where an input is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static LeafState Solve(
        LeafSurroundings around, LeafTraits traits, SecondPerMetre surface, KiloPascal? pressure = null, SaturationCurve? curve = null)
    {
        var terms = Terms(around, traits, surface, pressure, curve);
        if (!terms.Known)
        {
            return LeafState.Unknown;
        }

        double low = -WidestSearchK, high = WidestSearchK;
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) = terms.GainWm2(middle) > 0 ? (middle, high) : (low, middle);
        }

        return terms.State((low + high) / 2);
    }

    /// <summary>Balance solved in closed form, every term linear in the leaf's difference to the air.</summary>
    /// <param name="around">What surrounds the leaf.</param>
    /// <param name="traits">What the leaf is like.</param>
    /// <param name="surface">Resistance of one side's surface to vapour: 0 for a wet leaf, infinity for none. [s/m]</param>
    /// <param name="pressure">Air pressure; 101.325 when left out. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <returns>The leaf in balance; all NaN where an input is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>Δt = (Rni - g_v D)/(g_h + 4·2 ε σ T_a³ + g_v s)</c> with conductances of both sides, r_e taken at the Δt of
    /// the round before (five rounds).</para>
    /// <para><b>Error:</b> within 0.05 K of <see cref="Solve"/> for a leaf without any vapour exchange from -4 to +3 K off the air, for one that
    /// transpires, dries or gathers dew from -1.5 to +1 K, in air from 0.03 m/s (LeafBalanceTests); 0.1 K at -2 and 0.4 K at -5 K.</para>
    /// </remarks>
    public static LeafState SolveLinear(
        LeafSurroundings around, LeafTraits traits, SecondPerMetre surface, KiloPascal? pressure = null, SaturationCurve? curve = null)
    {
        var terms = Terms(around, traits, surface, pressure, curve);
        if (!terms.Known)
        {
            return LeafState.Unknown;
        }

        double offsetK = 0;
        for (int round = 0; round < 5; round++)
        {
            offsetK = terms.LinearOffsetK(offsetK);
        }

        return terms.State(offsetK);
    }

    private static LeafTerms Terms(
        LeafSurroundings around, LeafTraits traits, SecondPerMetre surface, KiloPascal? pressure, SaturationCurve? curve)
    {
        if (surface.Value < 0)
        {
            Guard.Within(surface.Value, 0, double.PositiveInfinity, "s/m", nameof(surface));
        }

        double pressureKPa = Limits.AirPressure(pressure ?? new(LeafAir.StandardPressureKPa));
        return new(around.Checked(), traits.Checked(), surface.Value, pressureKPa, VapourPressure.CurveOr(curve));
    }
}
