using ClimateLens.Nursery;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Analysis.Gridding;

/// <summary>What the nursery file says of a series.</summary>
internal static class ColumnOf
{
    /// <summary>The settings of a column, or null when the nursery file does not name it (any more).</summary>
    public static ColumnSettings? Find(HouseInput input, string house, string source, string channel, string sensor)
        => input.Nursery.Exports
            .Where(e => e.Kind is null && e.Name == source && e.House == house)
            .SelectMany(e => e.Columns)
            .FirstOrDefault(c => c.Channel == channel && c.Sensor == sensor);

    /// <summary>The unit that the nursery file gives a column; that of the store where it gives none.</summary>
    public static Unit UnitOf(ColumnSettings? column, Channel channel)
        => column is not null && UnitCatalogue.TryGet(channel.Quantity, column.Unit, out Unit? unit) ? unit : UnitCatalogue.SiOf(channel.Quantity);
}
