namespace ClimateLens.Science.Matching;

/// <summary>Stretches of an outcome around a start, each against its own baseline.</summary>
internal sealed class Stretches
{
    private readonly ReadOnlyMemory<double> _outcome;
    private readonly WindowMeans _means;
    private readonly int[] _treatedBefore;
    private readonly int _washout;

    public Stretches(ReadOnlyMemory<double> outcome, ReadOnlySpan<bool> treated, MatchDesign design)
    {
        _outcome = outcome;
        _means = new WindowMeans(outcome.Span);
        _treatedBefore = new int[treated.Length + 1];
        for (int i = 0; i < treated.Length; i++)
        {
            _treatedBefore[i + 1] = _treatedBefore[i] + (treated[i] ? 1 : 0);
        }

        Before = design.Steps(design.BeforeHours);
        After = design.Steps(design.AfterHours);
        _washout = design.Steps(design.WashoutHours);
    }

    public int Before { get; }

    public int After { get; }

    /// <summary>Steps of a stretch.</summary>
    public int Length => Before + After;

    public bool IsMeasured(int start) => start >= Before && start + After <= _outcome.Length
        && double.IsFinite(_means.Mean(start - Before, start) + _means.Mean(start, start + After));

    public bool FollowsTreatment(int start) => Treated(Math.Max(0, start - _washout), start);

    public bool IsUntreated(int start) => !Treated(Math.Max(0, start - _washout), start + After);

    /// <summary>Rise of the mean after the start over the baseline.</summary>
    public double Rise(int start) => _means.Mean(start, start + After) - _means.Mean(start - Before, start);

    /// <summary>Rise over the baseline some steps after the start; NaN where not known.</summary>
    public double RiseAt(int start, int lag) => _outcome.Span[start + lag] - _means.Mean(start - Before, start);

    private bool Treated(int from, int until) => _treatedBefore[until] > _treatedBefore[from];
}
