using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>A treatment as it was noted.</summary>
/// <param name="At">When.</param>
/// <param name="Bench">Bench; empty for the whole house.</param>
/// <param name="What">Drench, spray …</param>
/// <param name="Purpose">Against or for what, in lower case; empty where not told.</param>
/// <param name="ActiveIngredient">Active ingredient; empty where not told.</param>
/// <param name="Codes">Its resistance groups.</param>
/// <param name="Rate">Rate, or null.</param>
/// <param name="RateUnit">Unit of the rate as written.</param>
/// <param name="VolumeMl">Volume a pot, or null. [mL]</param>
/// <param name="ReentryUntil">Until when nobody may enter, or null.</param>
internal sealed record Treatment(
    Instant At,
    string Bench,
    string What,
    string Purpose,
    string ActiveIngredient,
    ImmutableSortedSet<string> Codes,
    double? Rate,
    string RateUnit,
    double? VolumeMl,
    Instant? ReentryUntil);
