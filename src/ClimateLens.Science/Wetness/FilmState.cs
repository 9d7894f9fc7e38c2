using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Wetness;

/// <summary>Four films while a stretch is worked through: one film each when known, the driest and the wettest it can be when not.</summary>
internal struct FilmState
{
    private readonly int _longestHold;
    private readonly Vector256<double> _capacityMm, _floorMm;
    private readonly double _nightMs;
    private Vector256<double> _lowMm, _highMm;
    private Vector256<double> _firstMm, _lastMm;
    private Vector256<double> _wateredMm, _condensedMm, _evaporatedMm, _drippedMm, _lostMm;
    private Vector256<double> _guessK; // the leaf of the step before is the best start
    private Vector256<double> _skipped;

    /// <param name="parameters">What the foliage is like, but for the capacity.</param>
    /// <param name="capacityMm">Water that each can hold.</param>
    /// <param name="startMm">The film of all; NaN for not known.</param>
    public FilmState(in FilmParameters parameters, Vector256<double> capacityMm, double startMm)
    {
        _longestHold = parameters.LongestHold;
        _floorMm = Vector256.Create(parameters.FloorMm);
        _capacityMm = capacityMm;
        _nightMs = 1 / parameters.Leaf.NightResistanceSm;
        _firstMm = _lastMm = Vector256.Create(startMm);
        (_lowMm, _highMm) = double.IsNaN(startMm) ? (Vector256<double>.Zero, capacityMm) : (_firstMm, _firstMm);
    }

    /// <summary>The film; the driest it can be where it is not known but wet for sure; else NaN.</summary>
    public readonly Vector256<double> FilmMm => Vector256.ConditionalSelect(
        Vector256.Equals(_lowMm, _highMm) | Vector256.GreaterThanOrEqual(_lowMm, Vector256.Create(WetStates.Default.WetFromMm)), _lowMm, Vector256.Create(double.NaN));

    /// <summary>The account of the first.</summary>
    public readonly FilmBudget Budget => new(_firstMm[0], _lastMm[0], _wateredMm[0], _condensedMm[0], _evaporatedMm[0], _drippedMm[0], _lostMm[0]);

    /// <summary>Moves on by a step; gives leaf minus air, NaN where it has no data. [K]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Advance(
        in LeafKernel leaf, Vector256<double> hasData, Vector256<double> absorbedWm2, Vector256<double> airC, Vector256<double> measuredOffsetK,
        Vector256<double> waterMm, double stepSeconds)
    {
        Vector256<double> known = Vector256.Equals(_lowMm, _highMm);
        Vector256<double> surfaceMs = SurfaceMs(hasData & Vector256.Equals(_lowMm + waterMm, Vector256<double>.Zero), absorbedWm2, airC, leaf.AirDeficitKPa);
        Step(leaf, hasData, _lowMm, surfaceMs, measuredOffsetK, waterMm, stepSeconds, out FilmStep low);
        _guessK = Vector256.ConditionalSelect(hasData, low.OffsetK, _guessK);
        Count(low, waterMm, hasData & known);
        Vector256<double> unknown = hasData & ~known;
        if (Lanes.Any(unknown))
        {
            Step(leaf, unknown, _highMm, surfaceMs, measuredOffsetK, waterMm, stepSeconds, out FilmStep high);
            _highMm = Vector256.ConditionalSelect(unknown, high.FilmMm, _highMm);
        }

        _lowMm = Vector256.ConditionalSelect(hasData, low.FilmMm, _lowMm);
        _highMm = Vector256.ConditionalSelect(hasData & known, low.FilmMm, _highMm);
        BecomeKnown(unknown & Vector256.Equals(_lowMm, _highMm));
        Skip(hasData);
        return Vector256.ConditionalSelect(hasData, low.OffsetK, Vector256.Create(double.NaN));
    }

    /// <summary>Without data a film is kept for a while, then no longer known.</summary>
    private void Skip(Vector256<double> hasData)
    {
        _skipped = (_skipped + Vector256<double>.One) & ~hasData;
        Vector256<double> lost = Vector256.Equals(_skipped, Vector256.Create(_longestHold + 1.0));
        _lowMm = Vector256.ConditionalSelect(lost, Vector256<double>.Zero, _lowMm);
        _highMm = Vector256.ConditionalSelect(lost, _capacityMm, _highMm);
    }

    /// <summary>Conductance of one side's surface where it is dry; 0 elsewhere. [m/s]</summary>
    private readonly Vector256<double> SurfaceMs(Vector256<double> dry, Vector256<double> absorbedWm2, Vector256<double> airC, Vector256<double> deficitKPa)
    {
        uint which = Vector256.ExtractMostSignificantBits(dry);
        return which == 0
            ? Vector256<double>.Zero
            : Vector256.Create(
                (which & 1) == 0 ? 0 : SurfaceResistance.ConductanceMs(_nightMs, absorbedWm2[0], airC[0], deficitKPa[0]),
                (which & 2) == 0 ? 0 : SurfaceResistance.ConductanceMs(_nightMs, absorbedWm2[1], airC[1], deficitKPa[1]),
                (which & 4) == 0 ? 0 : SurfaceResistance.ConductanceMs(_nightMs, absorbedWm2[2], airC[2], deficitKPa[2]),
                (which & 8) == 0 ? 0 : SurfaceResistance.ConductanceMs(_nightMs, absorbedWm2[3], airC[3], deficitKPa[3]));
    }

    private readonly void Step(
        in LeafKernel leaf, Vector256<double> wanted, Vector256<double> filmMm, Vector256<double> surfaceMs, Vector256<double> measuredOffsetK,
        Vector256<double> waterMm, double stepSeconds, out FilmStep step)
    {
        Vector256<double> zero = Vector256<double>.Zero;
        Vector256<double> held = Vector256.MinNative(_capacityMm, filmMm + waterMm);
        Vector256<double> measured = Lanes.Known(measuredOffsetK);
        Vector256<double> reckoned = wanted & ~measured;
        Vector256<double> balanceK = Lanes.Any(reckoned) ? leaf.OffsetK(reckoned, Vector256.GreaterThan(held, zero), surfaceMs, _guessK) : _guessK;
        step.OffsetK = Vector256.ConditionalSelect(measured, measuredOffsetK, balanceK);
        Vector256<double> fluxMm = leaf.WetLatentWm2(step.OffsetK) / leaf.LatentHeatJKg * stepSeconds; // 1 kg/m² is 1 mm
        Vector256<double> evaporates = Vector256.GreaterThanOrEqual(fluxMm, zero);
        Vector256<double> after = held - fluxMm;
        Vector256<double> left = Vector256.ConditionalSelect(Vector256.LessThan(after, _floorMm), zero, after);
        Vector256<double> wetter = Vector256.MinNative(_capacityMm, after);
        Vector256<double> dripped = filmMm + waterMm - held;
        step.FilmMm = Vector256.ConditionalSelect(evaporates, left, wetter);
        step.EvaporatedMm = (held - left) & evaporates;
        step.CondensedMm = Vector256.AndNot(-fluxMm, evaporates);
        step.DrippedMm = Vector256.ConditionalSelect(evaporates, dripped, dripped + (after - wetter));
    }

    private void Count(in FilmStep step, Vector256<double> waterMm, Vector256<double> where)
    {
        _wateredMm += waterMm & where;
        _condensedMm += step.CondensedMm & where;
        _evaporatedMm += step.EvaporatedMm & where;
        _drippedMm += step.DrippedMm & where;
        _lastMm = Vector256.ConditionalSelect(where, step.FilmMm, _lastMm);
    }

    private void BecomeKnown(Vector256<double> where)
    {
        if (!Lanes.Any(where))
        {
            return;
        }

        Vector256<double> again = where & Lanes.Known(_firstMm);
        _lostMm += (_lastMm - _lowMm) & again;
        _firstMm = Vector256.ConditionalSelect(where & ~again, _lowMm, _firstMm);
        _lastMm = Vector256.ConditionalSelect(where, _lowMm, _lastMm);
    }

    private struct FilmStep
    {
        public Vector256<double> FilmMm, OffsetK, CondensedMm, EvaporatedMm, DrippedMm;
    }
}
