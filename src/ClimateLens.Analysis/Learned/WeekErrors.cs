namespace ClimateLens.Analysis.Learned;

/// <summary>
/// Logged less expected for every learned sensor and step of a period. Sensors are predicted from each other, so that a wrong one makes the
/// right ones look wrong as well; once one is named, what it should have read stands in its place and the others are predicted anew.
/// </summary>
/// <remarks>
/// <para>Which to name first: the one that is furthest out in units of its own usual error. For predictions that are planes, learned from
/// data without end, the echo of a fault in sensor j at sensor i is |ρij| ≤ 1 times as many of its units as j's own, where ρij is their
/// partial correlation; and it is gone once j is replaced (with the precision matrix Ω, the error of i is (Ωx)i/Ωii).</para>
/// </remarks>
internal sealed class WeekErrors
{
    private readonly SensorFit[] _fits;
    private readonly double[][] _columns;
    private readonly double[][] _errors;
    private readonly bool[][] _named;

    /// <summary>Predicts every step.</summary>
    /// <param name="week">The period.</param>
    /// <param name="fits">What was learned.</param>
    public WeekErrors(SensorTable week, SensorFit[] fits)
    {
        _fits = fits;
        _columns = [.. week.Columns.Select(c => (double[])c.Clone())];
        _named = [.. fits.Select(_ => new bool[week.Count])];
        _errors = [.. fits.Select(fit => Enumerable.Range(0, week.Count).Select(i => _columns[fit.Target][i] - fit.Expected(_columns, i)).ToArray())];
    }

    /// <summary>Errors of a sensor, NaN where it or an input has no value. [SI unit of the channel]</summary>
    public double[] Of(int fit) => _errors[fit];

    /// <summary>Whether a sensor has been named at a step.</summary>
    public bool IsNamed(int fit, int step) => _named[fit][step];

    /// <summary>Names a sensor at a step: its error stays as it is, and the others' are worked out with what it should have read.</summary>
    public void Name(int fit, int step)
    {
        if (_named[fit][step] || !double.IsFinite(_errors[fit][step]))
        {
            return;
        }

        _named[fit][step] = true;
        _columns[_fits[fit].Target][step] -= _errors[fit][step];
        for (int other = 0; other < _fits.Length; other++)
        {
            if (!_named[other][step])
            {
                _errors[other][step] = _columns[_fits[other].Target][step] - _fits[other].Expected(_columns, step);
            }
        }
    }
}
