using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>The fields without which a header in the middle of a file cannot be taken for the columns below it.</summary>
internal static class WantedFields
{
    /// <summary>The time, the fields of conditions, and all that is given by its place.</summary>
    public static FieldRef[] Of(ExportSettings export) =>
    [
        .. export.Time.Fields,
        .. export.Time.EndFields,
        .. export.Columns.SelectMany(c => c.Where).Select(w => new FieldRef(w.Field, null)).Distinct(),
        .. export.Columns.Select(c => c.Field).Where(f => f.Position is not null),
    ];

    /// <summary>The fields of values that are found by name: a header that has none of them is of another table.</summary>
    public static string[] Values(ExportSettings export) => [.. export.Columns.Select(c => c.Field.Name).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)];
}
