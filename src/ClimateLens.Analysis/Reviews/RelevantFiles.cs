using ClimateLens.Nursery;

namespace ClimateLens.Analysis.Reviews;

/// <summary>
/// The files behind a review: those with rows between the start of the run-in and the end of the period, and those of which
/// nothing could be placed in time. Others have no say in it, and a new month's file does not make an old week's page stale.
/// </summary>
internal static class RelevantFiles
{
    public static IEnumerable<ImportSheet> Of(HouseInput input)
        => input.Files
            .Where(f => f.TellsOf(input.RunIn.Start, input.Period.End))
            .OrderBy(f => f.File, StringComparer.Ordinal)
            .ThenBy(f => f.Source, StringComparer.Ordinal)
            .ThenBy(f => f.House, StringComparer.Ordinal)
            .ThenBy(f => f.Sha256, StringComparer.Ordinal);
}
