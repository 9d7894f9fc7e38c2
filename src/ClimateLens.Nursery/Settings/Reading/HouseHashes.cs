using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>
/// What a nursery file says that may bear on one house, as a hash for each: all of it but remarks, the order of keys, other houses and their exports. So a remark, or
/// another house's bench, makes no page of this house again.
/// </summary>
internal static class HouseHashes
{
    /// <summary>The hashes by house id.</summary>
    /// <param name="root">The file.</param>
    /// <param name="ids">The houses.</param>
    public static ImmutableDictionary<string, string> Of(TomlTable root, IEnumerable<string> ids)
    {
        ILookup<string, (string Key, string Hash)> parts = root.Entries.SelectMany(Parts).ToLookup(part => part.House, part => (part.Key, part.Hash), StringComparer.Ordinal);
        return ids.Distinct(StringComparer.Ordinal).ToImmutableDictionary(id => id, id => Hash(parts[""].Concat(parts[id]).SelectMany(part => (string[])[part.Key, part.Hash])), StringComparer.Ordinal);
    }

    /// <summary>The file's tables, each with the house that it belongs to; "" for all of them.</summary>
    private static IEnumerable<(string House, string Key, string Hash)> Parts(TomlEntry entry) => entry.Value is TomlArray { FromHeaders: true } tables
        ? tables.Items.Select(table => (HouseOf(entry.Key, table), entry.Key, Hash(Said(table))))
        : [("", entry.Key, Hash(Said(entry.Value)))];

    private static string HouseOf(string key, TomlNode node)
        => node is TomlTable table && table.Find(key == "house" ? "id" : "house")?.Value is TomlScalar { Value: string id } ? id : "";

    private static string Hash(IEnumerable<string> texts)
    {
        using Digest digest = new();
        digest.Texts([.. texts]);
        return digest.Finish();
    }

    private static IEnumerable<string> Said(TomlNode node) => node switch
    {
        TomlTable table => ["{", .. table.Entries.OrderBy(e => e.Key, StringComparer.Ordinal).SelectMany(e => Said(e.Value).Prepend(e.Key)), "}"],
        TomlArray list => ["[", .. list.Items.SelectMany(Said), "]"],
        TomlScalar scalar => Said(scalar),
        _ => [],
    };

    private static string[] Said(TomlScalar scalar) => scalar.Value switch
    {
        string text => ["text", text],
        long or double => ["number", Convert.ToDouble(scalar.Value, CultureInfo.InvariantCulture).ToString("R", CultureInfo.InvariantCulture)],
        bool flag => [flag ? "true" : "false"],
        LocalDate date => ["date", LocalDatePattern.Iso.Format(date)],
        LocalDateTime time => ["time", LocalDateTimePattern.ExtendedIso.Format(time)],
        _ => ["as written", scalar.Source],
    };
}
