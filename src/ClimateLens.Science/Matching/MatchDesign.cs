namespace ClimateLens.Science.Matching;

/// <summary>How events are matched. The numbers are choices of this project; <see cref="EventMatching"/> says where a source stands behind one.</summary>
public sealed record MatchDesign
{
    /// <summary>Longest step that tells what an hour brings. [h]</summary>
    public const double LongestStepHours = 1;

    private const double UsualCandidateHours = 0.5;
    private readonly double? _candidateHours;

    /// <summary>Length of a step, above 0 to <see cref="LongestStepHours"/>. [h]</summary>
    public required double StepHours { get; init; }

    /// <summary>Time before the start over which a stretch's own baseline is taken. [h]</summary>
    public double BeforeHours { get; init; } = 1;

    /// <summary>Time after the start over which the effect is taken. [h]</summary>
    public double AfterHours { get; init; } = 6;

    /// <summary>No treatment for this long before a start: an earlier one would still be at work. At least <see cref="BeforeHours"/>. [h]</summary>
    public double WashoutHours { get; init; } = 6;

    /// <summary>Alike stretches sought for each event.</summary>
    public int Neighbours { get; init; } = 5;

    /// <summary>Calliper: greatest distance of a stretch that counts as alike. [standard deviations]</summary>
    public double Calliper { get; init; } = 0.5;

    /// <summary>Untreated stretches are tried this far apart; half an hour, or a step where that is longer, unless given. [h]</summary>
    public double CandidateHours
    {
        get => _candidateHours ?? Math.Max(UsualCandidateHours, StepHours);
        init => _candidateHours = value;
    }

    /// <summary>A covariate known in less than this share of all steps is left out. [1]</summary>
    public double LeastKnown { get; init; } = 0.5;

    /// <summary>Bootstrap draws, 20 or more.</summary>
    public int Draws { get; init; } = 1000;

    /// <summary>Sets of pseudo-events of the placebo test; 0 leaves it out.</summary>
    public int PlaceboSets { get; init; } = 100;

    /// <summary>Seed of all draws.</summary>
    public ulong Seed { get; init; } = 1;

    internal int Steps(double hours) => (int)Math.Round(hours / StepHours);

    internal void Check()
    {
        Guard.AboveUpTo(Guard.Finite(StepHours), 0, LongestStepHours, "h", nameof(StepHours));
        Guard.Within(Guard.Finite(BeforeHours), StepHours, 24, "h", nameof(BeforeHours));
        Guard.Within(Guard.Finite(AfterHours), StepHours, 48, "h", nameof(AfterHours));
        Guard.Within(Guard.Finite(WashoutHours), BeforeHours, 240, "h", nameof(WashoutHours));
        Guard.Within(Neighbours, 1, 100, "(stretches)");
        Guard.AboveUpTo(Guard.Finite(Calliper), 0, 100, "(standard deviations)", nameof(Calliper));
        Guard.Within(Guard.Finite(CandidateHours), StepHours, 24, "h", nameof(CandidateHours));
        Guard.Within(Guard.Finite(LeastKnown), 0, 1, "(share)", nameof(LeastKnown));
        Guard.Within(Draws, 20, 1_000_000, "(draws)");
        Guard.Within(PlaceboSets, 0, 100_000, "(sets)");
    }
}
