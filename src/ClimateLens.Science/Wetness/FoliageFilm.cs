using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Wetness;

/// <summary>Leaf temperature and the film of water on foliage, step by step.</summary>
/// <remarks>
/// <para><b>Formula:</b> the film gains water put on and dew, loses evaporation and what drips beyond its capacity. Dew and evaporation are the
/// vapour term of the leaf's balance (<see cref="LeafBalance"/>) without a surface resistance: Penman's equation with the leaf's own
/// long-wave loss. A dry leaf transpires through <see cref="SurfaceResistance"/> and takes up dew when colder than the dew point.</para>
/// <para><b>Source:</b> [PENMAN48] (from memory), [STANGHELLINI87]. <b>Error:</b> models of this kind miss by 0.8 h a day in one
/// greenhouse and by 4 h in another [GIL15]; the leaf's temperature is within 0.05 K of the full solution.</para>
/// </remarks>
public static class FoliageFilm
{
    /// <summary>Works through a stretch of steps.</summary>
    /// <param name="climate">Weather of the leaf.</param>
    /// <param name="wateringMm">Water put onto a leaf area in each step [mm]; empty for none.</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 3600. [s]</param>
    /// <param name="parameters">What the foliage is like.</param>
    /// <param name="startMm">Film before the first step; NaN for not known. [mm]</param>
    /// <param name="leafC">Receives the leaf temperature; NaN where the weather is not known. [°C]</param>
    /// <param name="filmMm">Receives the film at the end of each step; NaN where not known. [mm]</param>
    /// <returns>The account of the water.</returns>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is impossible.</exception>
    /// <remarks>
    /// A film that is not known is followed from empty and from full at once; from where both meet it is known, and where even the drier one is wet that one is given. Until then the leaf
    /// temperature is that of the leaf which started dry. A measured leaf temperature takes the place of the balance's. Impossible weather counts as not known. Allocates nothing.
    /// </remarks>
    public static FilmBudget Run(
        in LeafClimate climate, ReadOnlySpan<double> wateringMm, double stepSeconds, in FilmParameters parameters, double startMm,
        Span<double> leafC, Span<double> filmMm)
    {
        var one = new FilmRun(climate, wateringMm, parameters.CapacityMm, leafC, filmMm);
        return Run(one, one, one, one, stepSeconds, parameters, startMm);
    }

    /// <summary>Works through four stretches of the same steps at once; each comes out, to the last bit, as it would alone.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">Another; it may be the same.</param>
    /// <param name="c">Another.</param>
    /// <param name="d">Another.</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 3600. [s]</param>
    /// <param name="parameters">What the foliage is like; each run has a capacity of its own.</param>
    /// <param name="startMm">Film of all before the first step; NaN for not known. [mm]</param>
    /// <returns>The account of the water of the first.</returns>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is impossible.</exception>
    public static FilmBudget Run(in FilmRun a, in FilmRun b, in FilmRun c, in FilmRun d, double stepSeconds, in FilmParameters parameters, double startMm)
    {
        Check(a, a.AirC.Length, parameters, startMm);
        Check(b, a.AirC.Length, parameters, startMm);
        Check(c, a.AirC.Length, parameters, startMm);
        Check(d, a.AirC.Length, parameters, startMm);
        Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, 3600, "s");
        var state = new FilmState(parameters, Vector256.Create(a.CapacityMm, b.CapacityMm, c.CapacityMm, d.CapacityMm), startMm);
        var constants = new LeafConstants(parameters.Leaf, parameters.PressureKPa);
        for (int step = 0; step < a.LeafC.Length; step++)
        {
            Vector256<double> airC = Vector256.Create(a.AirC[step], b.AirC[step], c.AirC[step], d.AirC[step]);
            Vector256<double> humidityPct = Vector256.Create(a.HumidityPct[step], b.HumidityPct[step], c.HumidityPct[step], d.HumidityPct[step]);
            Vector256<double> absorbedWm2 = Vector256.Create(a.AbsorbedWm2[step], b.AbsorbedWm2[step], c.AbsorbedWm2[step], d.AbsorbedWm2[step]);
            Vector256<double> aboveC = Vector256.Create(a.AboveC[step], b.AboveC[step], c.AboveC[step], d.AboveC[step]);
            Vector256<double> speedMs = Vector256.Create(a.AirSpeedMs[step], b.AirSpeedMs[step], c.AirSpeedMs[step], d.AirSpeedMs[step]);
            Vector256<double> open = Vector256.Create(At(a.OpenShare, step, 1), At(b.OpenShare, step, 1), At(c.OpenShare, step, 1), At(d.OpenShare, step, 1));
            Vector256<double> measuredC = Vector256.Create(
                At(a.MeasuredLeafC, step, double.NaN), At(b.MeasuredLeafC, step, double.NaN), At(c.MeasuredLeafC, step, double.NaN), At(d.MeasuredLeafC, step, double.NaN));
            Vector256<double> waterMm = Vector256.Create(At(a.WateringMm, step, 0), At(b.WateringMm, step, 0), At(c.WateringMm, step, 0), At(d.WateringMm, step, 0));
            LeafKernel leaf = new(
                Lanes.Possible(airC, -30, 60), Lanes.Possible(humidityPct, 0, 100), Lanes.Possible(absorbedWm2, 0, 1500), Lanes.Possible(aboveC, -100, 100),
                Lanes.Possible(speedMs, 0, 10), Lanes.Possible(open, 0, 1), constants);
            Vector256<double> hasData = leaf.Known & Vector256.GreaterThanOrEqual(waterMm, Vector256<double>.Zero);
            Vector256<double> leafC = airC + state.Advance(leaf, hasData, absorbedWm2, airC, Lanes.Possible(measuredC, -30, 80) - airC, waterMm, stepSeconds);
            Vector256<double> film = Vector256.ConditionalSelect(hasData, state.FilmMm, Vector256.Create(double.NaN));
            (a.LeafC[step], b.LeafC[step], c.LeafC[step], d.LeafC[step]) = (leafC[0], leafC[1], leafC[2], leafC[3]);
            (a.FilmMm[step], b.FilmMm[step], c.FilmMm[step], d.FilmMm[step]) = (film[0], film[1], film[2], film[3]);
        }

        return state.Budget;
    }

    /// <summary>A value of a column that may be empty.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double At(ReadOnlySpan<double> column, int step, double otherwise) => column.IsEmpty ? otherwise : column[step];

    private static void Check(in FilmRun run, int steps, in FilmParameters parameters, double startMm)
    {
        run.Check();
        Guard.SameLength(steps, run.AirC.Length);
        (parameters with { CapacityMm = run.CapacityMm }).Checked();
        Guard.Within(startMm, 0, run.CapacityMm, "mm");
    }
}
