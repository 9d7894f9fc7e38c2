using System.Collections.Immutable;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime.TimeZones;

namespace ClimateLens.Logs.Readings;

/// <summary>One value column of a file.</summary>
/// <param name="Name">Name in the store.</param>
/// <param name="Field">0-based field, or -1 when the file lacks it.</param>
/// <param name="Reader">How its cells read.</param>
/// <param name="Where">Conditions on the rows that feed it.</param>
internal sealed record ReadingColumn(string Name, int Field, ValueReader Reader, ImmutableArray<FieldCondition> Where)
{
    /// <summary>How its cells read from later times on, the latest first; empty for nearly every column. [µs since 1970-01-01T00:00Z]</summary>
    public ImmutableArray<(long FromUtc, ValueReader Reader)> Later { get; init; } = [];

    /// <summary>How its cells read at a time.</summary>
    public ValueReader ReaderAt(long utc)
    {
        foreach ((long from, ValueReader reader) in Later)
        {
            if (utc >= from)
            {
                return reader;
            }
        }

        return Reader;
    }
}

/// <summary>Binds the columns of an export to the fields of a file.</summary>
internal static class ReadingColumns
{
    /// <summary>The columns in ordinal order of their names; missing ones are reported and stay missing.</summary>
    public static ReadingColumn[] Bind(ExportSettings export, ColumnFinder finder, ProblemList problems)
    {
        var columns = new List<ReadingColumn>();
        foreach (ColumnSettings settings in export.Columns)
        {
            string name = new ColumnKey(settings.Channel, settings.Sensor).ToString();
            Channel channel = ChannelCatalogue.Get(settings.Channel);
            var format = new NumberFormat(settings.Marks ?? export.Dialect.Marks);
            var missing = new MissingCodes(export.Dialect.MissingValues.Concat(settings.MissingValues), format);
            int field = finder.Find(settings.Field, ProblemCodes.Column, name, out Nursery.Problems.Problem? problem);
            if (problem is not null)
            {
                problems.Add(problem);
            }

            ValueReader ReaderOf(string unit) => ReaderIn(channel, unit, settings.Counter, format, missing);
            columns.Add(new ReadingColumn(name, field, ReaderOf(settings.Unit), settings.Where) { Later = Later(export, settings, ReaderOf) });
        }

        return [.. columns.DistinctBy(column => column.Name).OrderBy(column => column.Name, StringComparer.Ordinal)];
    }

    private static ValueReader ReaderIn(Channel channel, string code, bool counter, NumberFormat format, MissingCodes missing)
    {
        Unit unit = UnitCatalogue.TryGet(channel.Quantity, code, out Unit? known) ? known : UnitCatalogue.SiOf(channel.Quantity);
        // A counter may stand anywhere; only its differences have the channel's limits.
        return new ValueReader(unit, format, missing, counter ? 0 : channel.FailLow, counter ? double.MaxValue : channel.FailHigh);
    }

    private static ImmutableArray<(long FromUtc, ValueReader Reader)> Later(ExportSettings export, ColumnSettings settings, Func<string, ValueReader> readerOf)
        => [.. settings.UnitChanges.Reverse().Select(change => (Micros.Of(change.From.InZone(export.Time.Zone, Resolvers.LenientResolver).ToInstant()), readerOf(change.Unit)))];

    /// <summary>The names of an export's columns in the store, in ordinal order.</summary>
    public static string[] NamesOf(ExportSettings export)
        => [.. export.Columns.Select(c => new ColumnKey(c.Channel, c.Sensor).ToString()).Distinct().Order(StringComparer.Ordinal)];
}
