using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings.Reading;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>What a column of readings says of its values beside channel and unit: whether they count up, and when their unit changes.</summary>
internal static class ValueKeys
{
    public static readonly string[] ChangeKeys = ["from", "unit"];

    public static ColumnSettings Read(TableReader table, ColumnSettings column)
    {
        if (!ChannelCatalogue.TryGet(column.Channel, out Channel? channel))
        {
            return column;
        }

        return column with { Counter = Counter(table, channel), UnitChanges = Changes(table, channel) };
    }

    /// <summary>Reports both keys for records, where they have no meaning.</summary>
    public static void NotForRecords(TableReader table)
    {
        table.NotHere("counter", "is for readings only", "take it out.");
        table.NotHere("unitChanges", "is for readings only", "take it out, or give each part of the log its own [[export]].");
    }

    private static bool Counter(TableReader table, Channel channel)
    {
        if (channel.Gridding != Gridding.Amount)
        {
            string amounts = string.Join(", ", ChannelCatalogue.All.Where(c => c.Gridding == Gridding.Amount).Select(c => c.Name));
            table.NotHere("counter", $"has no meaning for {channel.Name}", $"it is for amounts: {amounts}.");
            return false;
        }

        return table.Flag("counter") ?? false;
    }

    private static ImmutableArray<UnitChange> Changes(TableReader table, Channel channel)
    {
        LocalDateTime? before = null;
        List<UnitChange> changes = [];
        foreach (TableReader change in table.Tables("unitChanges", "[[export.column.unitChanges]]", ChangeKeys))
        {
            LocalDateTime? from = change.Moment("from", "2025-10-14T12:00:00");
            Unit? unit = ChannelKeys.Unit(change, channel.Quantity, channel.Name, null, ChannelKeys.MendReading);
            if (from <= before)
            {
                change.Faults.Error(FaultCodes.Order, change.PlaceOf("from"), $"from = {Show(from.Value)} is not after the change before it, {Show(before.Value)}", "", "write the changes in the order of their times.");
            }

            before = from ?? before;
            if (from is { } moment && unit is { } known)
            {
                changes.Add(new UnitChange(moment, known.Code));
            }
        }

        return [.. changes];
    }

    private static string Show(LocalDateTime moment) => LocalDateTimePattern.ExtendedIso.WithCulture(CultureInfo.InvariantCulture).Format(moment);
}
