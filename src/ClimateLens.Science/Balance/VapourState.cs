namespace ClimateLens.Science.Balance;

/// <summary>Vapour in the air of a house, and water that still evaporates from its surfaces, moved on step by step.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>h dχ/dt = C (a S + b D) + Σ k ω (D + κ S) - G (χ - χ_out) - c max(0, χ - χ_cover)</c> with D = χ_sat - χ and
/// ω the wet part of a surface, m^⅔, m the share of its store that is left [DEARDORFF78] (memory). Linear in χ between dew and no dew, so a step is an exponential, and where dew
/// begins or ends within it two. Stores shrink by what evaporates, over a step at the deficit of its start.</para>
/// <para>χ never exceeds saturation: what would is fog or dew anywhere.</para>
/// </remarks>
internal struct VapourState(double humidityGm3)
{
    private double _leaf, _floor;

    public double HumidityGm3 { get; private set; } = humidityGm3;

    /// <summary>The same wet surfaces in air of another humidity.</summary>
    public readonly VapourState At(double humidityGm3) => this with { HumidityGm3 = humidityGm3 };

    /// <summary>One step with constant drivers.</summary>
    public void Step(ReadOnlySpan<double> p, in StepDrivers at, double heightM, double hours)
    {
        HumidityGm3 = Math.Min(HumidityGm3, at.SaturatedGm3); // air that cools leaves its surplus as dew; pores take none in
        double leafStore = p[(int)BalanceTerm.LeafStore], floorStore = p[(int)BalanceTerm.FloorStore];
        _leaf = Math.Min(leafStore, _leaf + (leafStore * at.LeafWetted));
        _floor = Math.Min(floorStore, _floor + (floorStore * at.FloorWetted));
        double sun = p[(int)BalanceTerm.SunDrying] * at.SunWm2;
        double leafDrive = at.SaturatedGm3 + sun, floorDrive = at.SaturatedGm3 + ((1 - at.Cover) * sun);
        double leaf = Conductance(p[(int)BalanceTerm.LeafEvaporation], _leaf, leafStore, leafDrive - HumidityGm3, hours);
        double floor = Conductance(p[(int)BalanceTerm.FloorEvaporation], _floor, floorStore, floorDrive - HumidityGm3, hours);
        double pores = at.Cover * p[(int)BalanceTerm.AirTranspiration];
        double exchange = p[(int)BalanceTerm.Leak] + (p[(int)BalanceTerm.WindLeak] * at.WindMs)
            + (at.Vent * (p[(int)BalanceTerm.VentStill] + (p[(int)BalanceTerm.VentWind] * at.WindMs))) + (p[(int)BalanceTerm.Fan] * at.Fan);
        double gains = (at.Cover * p[(int)BalanceTerm.SunTranspiration] * at.SunWm2) + (pores * at.SaturatedGm3)
            + (leaf * leafDrive) + (floor * floorDrive) + (exchange * at.OutsideGm3);
        double losses = pores + leaf + floor + exchange;
        double mean = Math.Min(Relax(gains, losses, p[(int)BalanceTerm.CoverCondensation], at.CoverGm3, heightM, hours), at.SaturatedGm3);
        HumidityGm3 = Math.Min(HumidityGm3, at.SaturatedGm3);
        _leaf = Math.Max(0, _leaf - Math.Max(0, leaf * (leafDrive - mean) * hours));
        _floor = Math.Max(0, _floor - Math.Max(0, floor * (floorDrive - mean) * hours));
    }

    /// <summary>
    /// Mean conductance over a step of a store that shrinks by <c>dm/dt ∝ -m^⅔</c>, so that <c>m^⅓</c> falls steadily; the deficit is that at its start. No more evaporates than there is.
    /// </summary>
    private static double Conductance(double full, double left, double store, double deficit, double hours)
    {
        if (left <= 0)
        {
            return 0;
        }

        double before = Math.Cbrt(left / store), falls = full * Math.Max(0, deficit) * hours / (3 * store);
        double after = before - falls;
        return after > 0 ? full * ((before * before) + (before * after) + (after * after)) / 3 : left / (deficit * hours);
    }

    /// <summary>Moves the humidity on and returns its mean over the step.</summary>
    private double Relax(double gains, double losses, double dew, double coverGm3, double heightM, double hours)
    {
        double before = HumidityGm3;
        bool dewy = before > coverGm3 && dew > 0;
        (double rest, double rate) = Towards(gains, losses, dewy ? dew : 0, coverGm3, heightM);
        double decay = Math.Exp(-rate * hours), after = rest + ((before - rest) * decay);
        bool crosses = dew > 0 && (after > coverGm3) != (before > coverGm3);
        if (!crosses)
        {
            HumidityGm3 = after;
            return rest + ((before - rest) * (1 - decay) / (rate * hours));
        }

        // From where dew begins or ends the rest of the step runs by the other rate; the direction stays, so once at most.
        double first = Math.Clamp(Math.Log((before - rest) / (coverGm3 - rest)) / rate, 0, hours), left = hours - first;
        double sum = (rest * first) + ((before - coverGm3) / rate);
        (rest, rate) = Towards(gains, losses, dewy ? 0 : dew, coverGm3, heightM);
        decay = Math.Exp(-rate * left);
        HumidityGm3 = rest + ((coverGm3 - rest) * decay);
        return (sum + (rest * left) + ((coverGm3 - rest) * (1 - decay) / rate)) / hours;
    }

    private static (double Settled, double Rate) Towards(double gains, double losses, double dew, double coverGm3, double heightM) =>
        dew > 0 ? ((gains + (dew * coverGm3)) / (losses + dew), (losses + dew) / heightM) : (gains / losses, losses / heightM);
}
