using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Store;

/// <summary>Names a source of the store.</summary>
/// <param name="House">House id of the export, or "nursery".</param>
/// <param name="Kind">Record kind, or null for readings.</param>
/// <param name="Source">Export name.</param>
internal sealed record SourceKey(string House, RecordKind? Kind, string Source)
{
    /// <summary>The key of an export.</summary>
    public static SourceKey Of(ExportSettings export) => new(export.House, export.Kind, export.Name);
}
