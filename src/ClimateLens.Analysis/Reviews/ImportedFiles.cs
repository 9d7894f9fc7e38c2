using System.Collections.Immutable;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Imports;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The import sheets of the files behind a review, in local time.</summary>
internal static class ImportedFiles
{
    public static ImmutableArray<ImportedFile> Of(HouseInput input)
    {
        DateTimeZone zone = input.Nursery.Zone;
        return
        [
            .. RelevantFiles.Of(input).Select(f => new ImportedFile(
                f.File, f.House, f.Source, f.RowsRead, f.Accepted, f.SetAside, f.Duplicates, f.Blank, f.CellsNotRead, f.Conflicts,
                At(f.First, zone), At(f.Last, zone), f.Details is ImportDetails details ? Found(details, zone) : null)),
        ];
    }

    private static FileFindings Found(ImportDetails details, DateTimeZone zone) => new(
        details.Reasons,
        details.StepSeconds,
        details.StepShare,
        details.Gaps?.Count,
        details.Gaps?.MissingHours,
        [.. (details.Gaps?.Longest ?? []).Select(g => new FoundGap(g.After.InZone(zone).ToOffsetDateTime(), g.Before.InZone(zone).ToOffsetDateTime(), (g.Before - g.After).TotalHours))],
        details.Channels,
        details.TimeFormats,
        details.UnusedColumns,
        details.UnusedColumnCount,
        details.Dialect,
        details.Clock);

    private static OffsetDateTime? At(Instant? instant, DateTimeZone zone) => instant?.InZone(zone).ToOffsetDateTime();
}
