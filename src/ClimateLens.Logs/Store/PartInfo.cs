using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Store;

/// <summary>What a Parquet file says about itself beside its rows.</summary>
/// <param name="House">House of the export.</param>
/// <param name="Source">Export name.</param>
/// <param name="TimeZone">Zone that the export's stamps were in.</param>
/// <param name="Stamps">What a stamp labels.</param>
/// <param name="Settings">Hash of the settings that the files were read with.</param>
/// <param name="Units">Unit by column.</param>
internal sealed record PartInfo(string House, string Source, string TimeZone, StampSide Stamps, string Settings, SortedDictionary<string, string> Units)
{
    /// <summary>For the readings of an export.</summary>
    public static PartInfo OfReadings(ExportSettings export, string settings, IEnumerable<string> columns)
    {
        var units = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (string name in columns)
        {
            units[name] = UnitCatalogue.SiOf(ChannelCatalogue.Get(ColumnKey.Parse(name).Channel).Quantity).Code;
        }

        return new PartInfo(export.House, export.Name, export.Time.Zone.Id, export.StampSide, settings, units);
    }
}
