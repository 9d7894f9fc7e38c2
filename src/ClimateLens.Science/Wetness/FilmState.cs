using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Wetness;

/// <summary>The film while a stretch is worked through: one film when known, the driest and the wettest it can be when not.</summary>
internal ref struct FilmState
{
    private readonly FilmParameters _parameters;
    private double _lowMm, _highMm;
    private double _firstMm = double.NaN, _lastMm = double.NaN;
    private double _wateredMm, _condensedMm, _evaporatedMm, _drippedMm, _lostMm;
    private readonly double _nightMs;
    private double _guessK; // the leaf of the step before is the best start
    private int _skipped;

    public FilmState(in FilmParameters parameters, double startMm)
    {
        _parameters = parameters;
        _nightMs = 1 / parameters.Leaf.NightResistanceSm;
        bool known = !double.IsNaN(startMm);
        (_lowMm, _highMm) = known ? (startMm, startMm) : (0, parameters.CapacityMm);
        if (known)
        {
            _firstMm = _lastMm = startMm;
        }
    }

    /// <summary>The film; the driest it can be where it is not known but wet for sure; else NaN.</summary>
    public readonly double FilmMm => _lowMm == _highMm || _lowMm >= WetStates.Default.WetFromMm ? _lowMm : double.NaN;

    public readonly FilmBudget Budget => new(_firstMm, _lastMm, _wateredMm, _condensedMm, _evaporatedMm, _drippedMm, _lostMm);

    /// <summary>Moves on by a step; gives leaf minus air. [K]</summary>
    public double Advance(in LeafKernel leaf, double absorbedWm2, double airC, double measuredOffsetK, double waterMm, double stepSeconds)
    {
        _skipped = 0;
        bool known = _lowMm == _highMm;
        double surfaceMs = _lowMm + waterMm > 0
            ? 0
            : SurfaceResistance.ConductanceMs(_nightMs, absorbedWm2, airC, leaf.AirDeficitKPa);
        FilmStep low = Step(leaf, _lowMm, surfaceMs, measuredOffsetK, waterMm, stepSeconds);
        _guessK = low.OffsetK;
        if (known)
        {
            Count(low, waterMm);
            _lowMm = _highMm = low.FilmMm;
            return low.OffsetK;
        }

        FilmStep high = Step(leaf, _highMm, surfaceMs, measuredOffsetK, waterMm, stepSeconds);
        (_lowMm, _highMm) = (low.FilmMm, high.FilmMm);
        if (_lowMm == _highMm)
        {
            Known();
        }

        return low.OffsetK;
    }

    /// <summary>A step without data: the film is kept for a while, then no longer known.</summary>
    public double Skip()
    {
        if (++_skipped == _parameters.LongestHold + 1)
        {
            (_lowMm, _highMm) = (0, _parameters.CapacityMm);
        }

        return double.NaN;
    }

    private readonly FilmStep Step(in LeafKernel leaf, double filmMm, double surfaceMs, double measuredOffsetK, double waterMm, double stepSeconds)
    {
        double held = Math.Min(_parameters.CapacityMm, filmMm + waterMm);
        double offsetK = double.IsNaN(measuredOffsetK) ? leaf.OffsetK(held > 0, surfaceMs, _guessK) : measuredOffsetK;
        double fluxMm = leaf.WetLatentWm2(offsetK) / leaf.LatentHeatJKg * stepSeconds; // 1 kg/m² is 1 mm
        double dripped = filmMm + waterMm - held;
        if (fluxMm >= 0)
        {
            double left = held - fluxMm;
            left = left < _parameters.FloorMm ? 0 : left;
            return new(left, offsetK, 0, held - left, dripped);
        }

        double wetter = Math.Min(_parameters.CapacityMm, held - fluxMm);
        return new(wetter, offsetK, -fluxMm, 0, dripped + (held - fluxMm - wetter));
    }

    private void Count(in FilmStep step, double waterMm)
    {
        _wateredMm += waterMm;
        _condensedMm += step.CondensedMm;
        _evaporatedMm += step.EvaporatedMm;
        _drippedMm += step.DrippedMm;
        _lastMm = step.FilmMm;
    }

    private void Known()
    {
        if (double.IsNaN(_firstMm))
        {
            _firstMm = _lowMm;
        }
        else
        {
            _lostMm += _lastMm - _lowMm;
        }

        _lastMm = _lowMm;
    }

    private readonly record struct FilmStep(double FilmMm, double OffsetK, double CondensedMm, double EvaporatedMm, double DrippedMm);
}
