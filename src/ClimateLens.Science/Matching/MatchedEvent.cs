namespace ClimateLens.Science.Matching;

/// <summary>One event against the stretches most like it.</summary>
/// <param name="Start">Step at which it starts.</param>
/// <param name="Outcome">Whether it could be compared, and if not why.</param>
/// <param name="Stretches">Starts of the stretches it was compared with, nearest first; empty where it was not.</param>
/// <param name="Distance">Mean distance to them; NaN without. [standard deviations]</param>
/// <param name="Effect">Mean after the start of treated minus matched, each less its own baseline, in the unit of the outcome; NaN without.</param>
public sealed record MatchedEvent(int Start, MatchOutcome Outcome, IReadOnlyList<int> Stretches, double Distance, double Effect);
