using System.Collections.Immutable;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Readings;

/// <summary>One value column of a file.</summary>
/// <param name="Name">Name in the store.</param>
/// <param name="Field">0-based field, or -1 when the file lacks it.</param>
/// <param name="Reader">How its cells read.</param>
/// <param name="Where">Conditions on the rows that feed it.</param>
internal readonly record struct ReadingColumn(string Name, int Field, ValueReader Reader, ImmutableArray<FieldCondition> Where);

/// <summary>Binds the columns of an export to the fields of a file.</summary>
internal static class ReadingColumns
{
    /// <summary>The columns in ordinal order of their names; missing ones are reported and stay missing.</summary>
    public static ReadingColumn[] Bind(ExportSettings export, ColumnFinder finder, ProblemList problems)
    {
        var format = new NumberFormat(export.Dialect.DecimalChar, export.Dialect.GroupChar);
        var columns = new List<ReadingColumn>();
        foreach (ColumnSettings settings in export.Columns)
        {
            string name = new ColumnKey(settings.Channel, settings.Sensor).ToString();
            Channel channel = ChannelCatalogue.Get(settings.Channel);
            Unit unit = UnitCatalogue.TryGet(channel.Quantity, settings.Unit, out Unit known) ? known : UnitCatalogue.SiOf(channel.Quantity);
            var missing = new MissingCodes(export.Dialect.MissingValues.Concat(settings.MissingValues), format);
            int field = finder.Find(settings.Field, ProblemCodes.Column, name, out Nursery.Problems.Problem? problem);
            if (problem is not null)
            {
                problems.Add(problem);
            }

            columns.Add(new ReadingColumn(name, field, new ValueReader(unit, format, missing), settings.Where));
        }

        return [.. columns.DistinctBy(column => column.Name).OrderBy(column => column.Name, StringComparer.Ordinal)];
    }

    /// <summary>The names of an export's columns in the store, in ordinal order.</summary>
    public static string[] NamesOf(ExportSettings export)
        => [.. export.Columns.Select(c => new ColumnKey(c.Channel, c.Sensor).ToString()).Distinct().Order(StringComparer.Ordinal)];
}
