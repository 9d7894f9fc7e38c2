using System.Globalization;
using System.Text;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>
/// Hash of all that decides how a file of an export is read. Where it changes, the files are read again. Which files
/// are named and where the table stands in the nursery file do not matter.
/// </summary>
internal static class SettingsHash
{
    // Raise it when the reader itself comes to read the same file otherwise.
    private const int ReaderVersion = 3;

    /// <summary>The hash of an export's settings.</summary>
    public static string Of(ExportSettings export, NurserySettings nursery)
    {
        var text = new StringBuilder();
        Add(text, ReaderVersion, export.Kind, export.StepSeconds, export.StampSide);
        DialectSettings d = export.Dialect;
        Add(text, d.Encoding, d.Delimiter, d.QuoteChar, d.Marks, d.CommentChar, d.HeaderRow, d.DataRow, d.Sheet);
        Add(text, [.. d.HeaderRows]);
        Add(text, [.. d.Widths]);
        Add(text, [.. d.Entries]);
        Add(text, [.. d.MissingValues]);
        TimeSettings t = export.Time;
        Add(text, t.Field, t.TimeOfDayField, t.Format, t.Zone.Id, t.Year);
        Add(text, [.. t.MoreFields]);
        Add(text, [.. t.MoreFormats]);
        Add(text, [.. t.EndFields]);
        foreach (ColumnSettings c in export.Columns)
        {
            Add(text, c.Field, c.Channel, c.Sensor, c.Unit);
            Add(text, [.. c.MissingValues]);
            Add(text, [.. c.Where]);
            Add(text, c.Marks, c.Counter);
            Add(text, [.. c.UnitChanges.Select(u => FormattableString.Invariant($"{u.From:uuuu-MM-dd'T'HH:mm:ss.fffffff} {u.Unit}"))]);
        }

        // A row that names a house which the nursery file did not have is set aside; a new house takes it up again.
        Add(text, export.Kind is null ? [] : [.. nursery.Houses.Select(h => h.Id)]);

        // So is a pot check that its house makes impossible.
        foreach (HouseSettings house in export.Kind == Nursery.Records.RecordKind.PotChecks ? nursery.Houses : [])
        {
            Add(text, [house.Pots.DryWeightG, nursery.Zone.Id, .. house.Benches]);
            Add(text, [.. house.Crops.Select(c => FormattableString.Invariant($"{c.Potted:uuuu-MM-dd} {c.Sale:uuuu-MM-dd}"))]);
        }

        // The sheet holds the clock against the sun of the place.
        Add(text, export.Columns.Any(c => SourceClock.IsJudged(c.Channel)) ? [nursery.LatitudeDeg, nursery.LongitudeDeg, nursery.Zone.Id] : []);
        return ContentHash.Of(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static void Add(StringBuilder text, params object?[] values)
    {
        foreach (object? value in values)
        {
            string written = Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
            text.Append(CultureInfo.InvariantCulture, $"{(value is null ? 'n' : 'v')}{written.Length}:{written}");
        }

        text.Append('\n');
    }
}
