using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>How a review came about.</summary>
internal static class ProvenanceOf
{
    /// <summary>Name and version of this tool.</summary>
    public static string Tool { get; } = $"ClimateLens {typeof(ProvenanceOf).Assembly.GetName().Version!.ToString(3)}";

    public static Provenance Review(HousePeriod period)
    {
        HouseInput input = period.Input;
        return new Provenance(
            Tool,
            BiasDraws.Seed,
            BiasDraws.Count,
            input.Nursery.ShortFileName,
            input.Nursery.ContentHash,
            InputFingerprint.Of(input),
            TimeZoneData,
            Thresholds.Of(period),
            MethodNotes.Of(period),
            [.. RelevantFiles.Of(input).Select(f => new SourceFile(f.File, f.Sha256, f.Source, f.RowsRead, f.Accepted, f.SetAside, f.Duplicates, f.Blank, f.CellsNotRead, f.Conflicts))])
        {
            Language = Nursery.Languages.Language.Current.Code,
        };
    }

    /// <summary>Version of the time-zone database that NodaTime carries.</summary>
    public static string TimeZoneData { get; } = DateTimeZoneProviders.Tzdb.VersionId;
}
