using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[[export.column]]: the columns to take.</summary>
internal static class ColumnTable
{
    public static readonly string[] Keys =
        ["field", "position", "channel", "unit", "sensor", "missingValues", "decimalChar", "groupChar", "counter", "unitChanges", "method", "litresPerMinute", "bench", "where"];

    public static ImmutableArray<ColumnSettings> ReadAll(TableReader export, DialectSettings dialect, RecordKind? kind, bool kindKnown)
    {
        if (!export.Has("column"))
        {
            export.Faults.Missing(FaultCodes.MissingKey, export.At, "[[export]] has no [[export.column]]", "", "add one for each column to take, with field, channel and unit.");
        }

        Dictionary<(string, string), int> lines = [];
        Dictionary<string, int> fields = [];
        List<ColumnSettings> columns = [];
        foreach (TableReader table in export.Tables("column", "[[export.column]]", Keys))
        {
            FieldRef field = FieldKeys.Read(table, "field", "position", dialect, required: true) ?? new FieldRef(null, 1);
            if (Read(table, field, dialect, kind, kindKnown) is not { } column)
            {
                continue;
            }

            columns.Add(column);
            string place = $"{field} {string.Join('\n', column.Where)}";
            if (!fields.TryAdd(place, table.At.Line))
            {
                string line = fields[place].ToString(CultureInfo.InvariantCulture);
                table.Faults.Warning(FaultCodes.Column, table.At, $"{Excerpt.Of(field.ToString())} is read a second time, as {column.Channel}", "", $"line {line} reads it too; look at the field again.");
            }

            if (!lines.TryAdd((column.Channel, column.Sensor), table.At.Line))
            {
                string line = lines[(column.Channel, column.Sensor)].ToString(CultureInfo.InvariantCulture);
                string mend = kind is null ? "give one of them a sensor = \"…\" of its own" : "take one of them out";
                table.Faults.Error(FaultCodes.Repeated, table.PlaceOf("channel"), $"a second column of this export is {column.Channel}{(column.Sensor.Length > 0 ? $" of sensor {column.Sensor}" : "")}", "", $"line {line} has it too; {mend}.");
            }
        }

        return [.. columns];
    }

    private static ColumnSettings? Read(TableReader table, FieldRef field, DialectSettings dialect, RecordKind? kind, bool kindKnown)
    {
        ImmutableArray<string> missing = DialectKeys.MissingValues(table);
        NumberMarks? marks = MarkKeys.OfColumn(table, dialect);
        if (!kindKnown)
        {
            return null; // what the channel may be depends on the kind, and that is reported
        }

        (string Channel, string Unit)? what = kind is null ? OfReading(table) : OfRecord(table, kind.Value);
        string sensor = table.Id("sensor") ?? "";
        if (kind is not null)
        {
            table.NotHere("where", "is for readings only", "take it out.");
        }

        bool valve = what?.Channel == "valve" && kind is null, meter = what?.Channel == "waterVolume" && kind is null;
        if (what is not null && !valve)
        {
            table.NotHere("litresPerMinute", "is for valve columns only", "take it out.");
            foreach (string key in meter ? [] : (string[])["method", "bench"])
            {
                table.NotHere(key, "is for valve and waterVolume columns only", "take it out.");
            }
        }

        ColumnSettings column = new(field, what?.Channel ?? "", sensor, what?.Unit ?? "", table.At.Line) { MissingValues = missing, Marks = marks, Where = kind is null ? ShapeKeys.Where(table, dialect) : [] };
        column = kind is null ? ValueKeys.Read(table, column) : column;
        return what is null ? null : valve ? ValveKeys.Read(table, column) : meter ? ValveKeys.ReadMeter(table, column) : column;
    }

    private static (string Channel, string Unit)? OfReading(TableReader table)
    {
        if (ChannelKeys.Channel(table) is not { } channel)
        {
            return null;
        }

        string? usual = channel.Quantity == Quantity.OnOff ? UnitCatalogue.SiOf(channel.Quantity).Code : null;
        return (channel.Name, ChannelKeys.Unit(table, channel.Quantity, channel.Name, usual, ChannelKeys.MendReading)?.Code ?? "");
    }

    private static (string Channel, string Unit)? OfRecord(TableReader table, RecordKind kind)
    {
        table.NotHere("sensor", "is for readings only", "take it out.");
        ValueKeys.NotForRecords(table);
        if (table.Text("channel", "\"note\"") is not { } name)
        {
            return null;
        }

        if (!RecordFields.TryGet(kind, name, out RecordField? field))
        {
            string[] names = [.. RecordFields.Of(kind).Select(f => f.Name)];
            table.Faults.Error(FaultCodes.Channel, table.PlaceOf("channel"), $"{RecordKinds.WordOf(kind)} have no field {Excerpt.Quoted(name)}", $"one of: {string.Join(", ", names)}", NearestName.Mend(name, names, "take one of these names, or note for anything else."));
            return null;
        }

        if (field.Quantity is { } quantity)
        {
            return (name, ChannelKeys.Unit(table, quantity, name, field.DefaultUnit, _ => "write the unit that the file uses.")?.Code ?? "");
        }

        table.NotHere("unit", $"has no meaning for {name}", "take it out.");
        return (name, "");
    }
}
