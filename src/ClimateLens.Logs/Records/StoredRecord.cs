using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Records;

/// <summary>One record in the store.</summary>
/// <param name="House">House id, or "nursery" where the record speaks of no single house.</param>
/// <param name="Utc">When. [µs since 1970-01-01T00:00Z]</param>
/// <param name="File">File that it came from, as an index into the source's list of files.</param>
/// <param name="Line">1-based line in that file.</param>
/// <param name="Fields">Fields by name; numbers in SI, times in UTC (ISO 8601).</param>
internal sealed record StoredRecord(string House, long Utc, int File, int Line, ImmutableSortedDictionary<string, string> Fields)
{
    /// <summary>Two records of the same content have the same key.</summary>
    public string Key { get; } = KeyOf(House, Utc, Fields);

    /// <summary>The content for the set-aside file.</summary>
    public byte[] Text() => Encoding.UTF8.GetBytes(
        Store.Micros.ToIso(Utc)
        + string.Concat(Fields.Select(f => $"; {f.Key}={f.Value}")));

    private static string KeyOf(string house, long utc, ImmutableSortedDictionary<string, string> fields)
        => string.Create(CultureInfo.InvariantCulture, $"{house}\u0001{utc}") + string.Concat(fields.Select(f => $"\u0001{f.Key}\u0002{f.Value}"));
}
