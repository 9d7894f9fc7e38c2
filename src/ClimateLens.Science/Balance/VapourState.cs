using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace ClimateLens.Science.Balance;

/// <summary>Vapour in the air of a house, and water that still evaporates from its surfaces, moved on step by step under four sets of parameters at once.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>h dχ/dt = C (a S + b D) + Σ k ω (D + κ S) - G (χ - χ_out) - c max(0, χ - χ_cover)</c> with D = χ_sat - χ and
/// ω the wet part of a surface, m^⅔, m the share of its store that is left [DEARDORFF78] (memory). Linear in χ between dew and no dew, so a step is an exponential, and where dew
/// begins or ends within it two. Stores shrink by what evaporates, over a step at the deficit of its start.</para>
/// <para>χ never exceeds saturation: what would is fog or dew anywhere.</para>
/// </remarks>
internal struct VapourState(Vector256<double> humidityGm3)
{
    private Vector256<double> _leaf, _floor;

    public Vector256<double> HumidityGm3 { get; private set; } = humidityGm3;

    /// <summary>The same wet surfaces in air of another humidity.</summary>
    public readonly VapourState At(double humidityGm3) => this with { HumidityGm3 = Vector256.Create(humidityGm3) };

    /// <summary>One step with constant drivers.</summary>
    /// <param name="p">The parameters in the order of <see cref="BalanceTerm"/>, each of all four sets.</param>
    /// <param name="at">The drivers.</param>
    /// <param name="heightM">Height of the house. [m]</param>
    /// <param name="hours">Length of the step. [h]</param>
    public void Step(ReadOnlySpan<Vector256<double>> p, in StepDrivers at, double heightM, double hours)
    {
        Vector256<double> saturated = Vector256.Create(at.SaturatedGm3);
        HumidityGm3 = Vector256.MinNative(HumidityGm3, saturated); // air that cools leaves its surplus as dew; pores take none in
        Vector256<double> leafStore = p[(int)BalanceTerm.LeafStore], floorStore = p[(int)BalanceTerm.FloorStore];
        _leaf = Vector256.MinNative(leafStore, _leaf + (leafStore * at.LeafWetted));
        _floor = Vector256.MinNative(floorStore, _floor + (floorStore * at.FloorWetted));
        Vector256<double> sun = p[(int)BalanceTerm.SunDrying] * at.SunWm2;
        Vector256<double> leafDrive = saturated + sun, floorDrive = saturated + ((1 - at.Cover) * sun);
        Vector256<double> leaf = Conductance(p[(int)BalanceTerm.LeafEvaporation], _leaf, leafStore, leafDrive - HumidityGm3, hours);
        Vector256<double> floor = Conductance(p[(int)BalanceTerm.FloorEvaporation], _floor, floorStore, floorDrive - HumidityGm3, hours);
        Vector256<double> pores = at.Cover * p[(int)BalanceTerm.AirTranspiration];
        Vector256<double> exchange = p[(int)BalanceTerm.Leak] + (p[(int)BalanceTerm.WindLeak] * at.WindMs)
            + (at.Vent * (p[(int)BalanceTerm.VentStill] + (p[(int)BalanceTerm.VentWind] * at.WindMs))) + (p[(int)BalanceTerm.Fan] * at.Fan);
        Vector256<double> gains = (at.Cover * p[(int)BalanceTerm.SunTranspiration] * at.SunWm2) + (pores * saturated)
            + (leaf * leafDrive) + (floor * floorDrive) + (exchange * at.OutsideGm3);
        Vector256<double> losses = pores + leaf + floor + exchange;
        Vector256<double> mean = Vector256.MinNative(Relax(gains, losses, p[(int)BalanceTerm.CoverCondensation], at.CoverGm3, heightM, hours), saturated);
        HumidityGm3 = Vector256.MinNative(HumidityGm3, saturated);
        _leaf = Left(_leaf, leaf * (leafDrive - mean) * hours);
        _floor = Left(_floor, floor * (floorDrive - mean) * hours);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Left(Vector256<double> store, Vector256<double> evaporates) =>
        Vector256.MaxNative(Vector256<double>.Zero, store - Vector256.MaxNative(Vector256<double>.Zero, evaporates));

    /// <summary>
    /// Mean conductance over a step of a store that shrinks by <c>dm/dt ∝ -m^⅔</c>, so that <c>m^⅓</c> falls steadily; the deficit is that at its start. No more evaporates than there is.
    /// </summary>
    private static Vector256<double> Conductance(Vector256<double> full, Vector256<double> left, Vector256<double> store, Vector256<double> deficit, double hours)
    {
        Vector256<double> zero = Vector256<double>.Zero, wet = Vector256.GreaterThan(left, zero);
        if (!Lanes.Any(wet))
        {
            return zero;
        }

        Vector256<double> before = Lanes.Map<CubeRoot>(left / store), falls = full * Vector256.MaxNative(zero, deficit) * hours / (3 * store);
        Vector256<double> after = before - falls;
        Vector256<double> mean = full * ((before * before) + (before * after) + (after * after)) / 3;
        return wet & Vector256.ConditionalSelect(Vector256.GreaterThan(after, zero), mean, left / (deficit * hours));
    }

    /// <summary>Moves the humidity on and returns its mean over the step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Relax(Vector256<double> gains, Vector256<double> losses, Vector256<double> dew, double coverGm3, double heightM, double hours)
    {
        Vector256<double> cover = Vector256.Create(coverGm3), dewCan = Vector256.GreaterThan(dew, Vector256<double>.Zero);
        Vector256<double> before = HumidityGm3, above = Vector256.GreaterThan(before, cover), dewy = above & dewCan;
        (Vector256<double> rest, Vector256<double> rate) = Towards(gains, losses, dew, dewy, cover, heightM);
        Vector256<double> decay = Lanes.Exp(-rate * hours), after = rest + ((before - rest) * decay);
        Vector256<double> mean = rest + ((before - rest) * (Vector256<double>.One - decay) / (rate * hours));
        Vector256<double> crosses = dewCan & (Vector256.GreaterThan(after, cover) ^ above);
        HumidityGm3 = after;
        if (!Lanes.Any(crosses))
        {
            return mean;
        }

        // From where dew begins or ends the rest of the step runs by the other rate; the direction stays, so once at most.
        Vector256<double> first = Vector256.MinNative(Vector256.MaxNative(
            Lanes.Map<Logarithm>((before - rest) / (cover - rest)) / rate, Vector256<double>.Zero), Vector256.Create(hours));
        Vector256<double> left = Vector256.Create(hours) - first, sum = (rest * first) + ((before - cover) / rate);
        (rest, rate) = Towards(gains, losses, dew, dewCan & ~dewy, cover, heightM);
        decay = Lanes.Exp(-rate * left);
        HumidityGm3 = Vector256.ConditionalSelect(crosses, rest + ((cover - rest) * decay), after);
        return Vector256.ConditionalSelect(crosses, (sum + (rest * left) + ((cover - rest) * (Vector256<double>.One - decay) / rate)) / hours, mean);
    }

    /// <summary>Where the humidity would settle, and how fast; with dew where it is so.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double> Settled, Vector256<double> Rate) Towards(
        Vector256<double> gains, Vector256<double> losses, Vector256<double> dew, Vector256<double> dewy, Vector256<double> cover, double heightM)
    {
        Vector256<double> all = losses + (dew & dewy);
        return ((gains + ((dew * cover) & dewy)) / all, all / heightM); // without a known cover χ_cover is infinite and never dewy
    }

    private readonly struct CubeRoot : Lanes.IScalar
    {
        public static double Of(double x) => Math.Cbrt(x);
    }

    private readonly struct Logarithm : Lanes.IScalar
    {
        public static double Of(double x) => Math.Log(x);
    }
}
