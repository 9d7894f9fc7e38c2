using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>Pot checks and logged waterings inside a re-entry time.</summary>
/// <remarks><b>Rule:</b> after a treatment and before the end of its re-entry time, on its bench, or anywhere for a treatment of the whole house. A boom writes its own log, so a watering need not be a person.</remarks>
internal static class Reentry
{
    /// <summary>What was logged inside, in time order.</summary>
    public static ImmutableArray<ReentryEntry> Of(HouseInput input, ImmutableArray<Treatment> treatments)
    {
        DateTimeZone zone = input.Nursery.Zone;
        var found =
            from treatment in treatments
            where treatment.ReentryUntil is not null
            from row in input.Records
            where row.Kind is RecordKind.PotChecks or RecordKind.Waterings && input.Period.Contains(row.At)
                && row.At > treatment.At && row.At < treatment.ReentryUntil && RecordText.SameBench(row.Text("bench"), treatment.Bench)
            orderby row.At, row.Line
            select new ReentryEntry(
                row.At.InZone(zone).ToOffsetDateTime(),
                row.Kind == RecordKind.PotChecks ? "potCheck" : "watering",
                row.Text("bench"),
                row.Signed(),
                treatment.At.InZone(zone).ToOffsetDateTime(),
                treatment.ReentryUntil!.Value.InZone(zone).ToOffsetDateTime());
        return [.. found];
    }
}
