using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>Floods of benches and floors: what stays in the air after one on a dull day and on a bright one.</summary>
/// <param name="LimitMJm2">A day with less sun over the crop is dull. [MJ/m²]</param>
/// <param name="Floods">Floods of the period.</param>
/// <param name="Dull">After floods on dull days of this and the weeks before.</param>
/// <param name="Bright">After floods on the other days.</param>
public sealed record FloodReport(double LimitMJm2, ImmutableArray<Flood> Floods, FloodEffect Dull, FloodEffect Bright);

/// <summary>A flood of the period.</summary>
/// <param name="Start">Start.</param>
/// <param name="Bench">Bench or floor; empty for the whole house.</param>
/// <param name="DaySunMJm2">Sun over the crop on its day; null where not known. [MJ/m²]</param>
/// <param name="Dull">Whether that is under the limit; null where not known.</param>
public sealed record Flood(OffsetDateTime Start, string Bench, double? DaySunMJm2, bool? Dull);

/// <summary>Water in the air over the six hours after floods, beyond alike hours without one.</summary>
/// <param name="Rounds">Rounds of floods.</param>
/// <param name="Matched">Rounds that could be compared.</param>
/// <param name="EffectGm3">Mean effect; null without one. Low and high are equal to it where too few were compared for a range. [g/m³]</param>
/// <param name="PlaceboRejections">Share of sets of moments without watering that seemed to have an effect, tried alike; about 0.1 is honest. [1]</param>
public sealed record FloodEffect(int Rounds, int Matched, Estimate? EffectGm3, double? PlaceboRejections);
