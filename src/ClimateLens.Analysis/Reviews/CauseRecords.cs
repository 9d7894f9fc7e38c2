using System.Collections.Immutable;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The vapour balance of the house, fitted to the weeks before the period.</summary>
/// <param name="Days">Days before the period that were looked at. [d]</param>
/// <param name="Parameters">What was fitted.</param>
/// <param name="ResidualGm3">Root mean square of measured minus modelled humidity, each day run free from its first reading. [g/m³]</param>
/// <param name="HeldOutDays">Days held out that were scored.</param>
/// <param name="SkillOverDayBefore">Skill on these over the humidity of the day before; null where not known. [1]</param>
/// <param name="SkillOverMeanDay">Skill on these over the mean day. [1]</param>
/// <param name="HasSkill">Whether it beats both.</param>
/// <param name="Lacks">What is not logged, and what that costs.</param>
public sealed record HouseBalanceReport(
    double Days, ImmutableArray<BalanceParameter> Parameters, double ResidualGm3, int HeldOutDays, double? SkillOverDayBefore, double? SkillOverMeanDay, bool HasSkill, ImmutableArray<string> Lacks)
{
    /// <summary>The same days learned without physics; null where they could not be.</summary>
    public LearnedResponseReport? Learned { get; init; }
}

/// <summary>What a model without physics makes of the days that the balance was fitted to and scored on.</summary>
/// <param name="Kind"><c>plane</c>, or <c>planeAndTrees</c> where trees did better on days not learned from.</param>
/// <param name="HeldOutDays">Days held out that were scored.</param>
/// <param name="SkillOverDayBefore">Skill on these over the humidity of the day before; null where not known. [1]</param>
/// <param name="SkillOverMeanDay">Skill on these over the mean day. [1]</param>
/// <param name="RootMeanSquareGm3">Its root mean square error over the held-out steps that both tell; null without any. [g/m³]</param>
/// <param name="BalanceRootMeanSquareGm3">That of the balance over the same steps. [g/m³]</param>
/// <param name="Better"><c>balance</c> or <c>learned</c>: which has the smaller of the two; null where that is not known.</param>
/// <param name="EffectGm3">What it gives for the waterings of the comparison; low and high are what two halves of the days give by themselves, and no 5 to 95 % range. Null where none was compared. [g/m³]</param>
public sealed record LearnedResponseReport(
    string Kind, int HeldOutDays, double? SkillOverDayBefore, double? SkillOverMeanDay, double? RootMeanSquareGm3, double? BalanceRootMeanSquareGm3, string? Better, Estimate? EffectGm3);

/// <summary>A parameter of the balance.</summary>
/// <param name="Name">Name, for example <c>ventWind</c>.</param>
/// <param name="Value">As fitted, in <paramref name="Unit"/>.</param>
/// <param name="Error">Standard error; null at a bound.</param>
/// <param name="Unit">Unit, a square metre of floor.</param>
/// <param name="Low">Least that physics allows.</param>
/// <param name="High">Most that physics allows.</param>
/// <param name="AtBound"><c>low</c>, <c>high</c> or empty.</param>
/// <param name="Told">Whether the data told more of it than was believed before.</param>
/// <param name="Source">Source of the bounds.</param>
public sealed record BalanceParameter(string Name, double Value, double? Error, string Unit, double Low, double High, string AtBound, bool Told, string Source);

/// <summary>Waterings over the leaves against the most similar stretches of the same house without one: what they did to the humidity from the hour before to six hours after their start.</summary>
/// <param name="Rounds">Rounds of waterings in the period and the weeks before it.</param>
/// <param name="Matched">Rounds that could be compared.</param>
/// <param name="Candidates">Stretches they could be compared with.</param>
/// <param name="EffectGm3">Mean effect; null without one. Without a range where too few were compared. [g/m³]</param>
/// <param name="ModelGm3">What the balance gives for the same rounds; null where it gives none. [g/m³]</param>
/// <param name="Agrees">Whether the two ranges have a point in common; null where they cannot be compared.</param>
/// <param name="Curve">Mean effect from an hour before the start on, one value a step. [g/m³]</param>
/// <param name="Balance">How alike events and stretches are.</param>
/// <param name="LeftOut">What could not be compared since it is not logged or does not vary.</param>
/// <param name="PlaceboSets">Sets of moments without watering that were tried alike.</param>
/// <param name="PlaceboRejections">Share of them that seemed to have an effect; about 0.1 is honest; null where none could be tried. [1]</param>
public sealed record MatchedWaterings(
    int Rounds, int Matched, int Candidates, Estimate? EffectGm3, Estimate? ModelGm3, bool? Agrees, ImmutableArray<EffectPoint> Curve,
    ImmutableArray<MatchedCovariate> Balance, ImmutableArray<string> LeftOut, int PlaceboSets, double? PlaceboRejections);

/// <summary>The mean effect at a time from the start of the watering.</summary>
/// <param name="Hours">From the start. [h]</param>
/// <param name="Gm3">Effect; low and high null where too few were compared. [g/m³]</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public sealed record EffectPoint(double Hours, double Gm3, double? Low, double? High);

/// <summary>How alike rounds and stretches are in one respect, in standard deviations; above 0.25 in size the comparison is weak.</summary>
/// <param name="Name">In what.</param>
/// <param name="Before">Rounds less all stretches without watering.</param>
/// <param name="After">Rounds less the stretches they were compared with.</param>
public sealed record MatchedCovariate(string Name, double Before, double After);
