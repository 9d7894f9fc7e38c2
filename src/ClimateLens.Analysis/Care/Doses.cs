using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;
using ClimateLens.Science.Irrigation;

namespace ClimateLens.Analysis.Care;

/// <summary>Treatments of the period with the active ingredient that a pot got, where volume and concentration are both noted.</summary>
internal static class Doses
{
    /// <summary>The treatments of the period in time order.</summary>
    public static ImmutableArray<TreatmentEntry> Of(HouseInput input, ImmutableArray<Treatment> treatments) =>
    [
        .. treatments
            .Where(t => t.At >= input.Period.Start)
            .Select(t => new TreatmentEntry(
                t.At.InZone(input.Nursery.Zone).ToOffsetDateTime(),
                t.Bench,
                t.What,
                t.Purpose,
                t.ActiveIngredient,
                [.. t.Codes],
                t.VolumeMl,
                t is { VolumeMl: { } volume, Rate: { } rate } && IsMilligramPerLitre(t.RateUnit) ? Dose.MilligramPerPot(volume, rate) : null,
                t.ReentryUntil?.InZone(input.Nursery.Zone).ToOffsetDateTime())),
    ];

    /// <summary>Whether a unit as written is milligrams of active ingredient a litre.</summary>
    public static bool IsMilligramPerLitre(string unit)
        => string.Concat(unit.Where(c => !char.IsWhiteSpace(c) && c != '.')).ToLowerInvariant() is "mg/l" or "ppm" or "mgai/l" or "ppmai";
}
