using System.Collections.Immutable;
using System.Text;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Reports.Data;

/// <summary>
/// Queries that read from the Parquet store what a cell was worked out from, to be run in the folder of the nursery file. How the store is laid out: docs/store.md.
/// </summary>
/// <param name="Sql">For DuckDB.</param>
/// <param name="Python">For pandas.</param>
public sealed record StoreQuery(string Sql, string Python)
{
    /// <summary>Hourly means of channels over the period of a review; null where none of them was read.</summary>
    /// <param name="review">The review.</param>
    /// <param name="store">Folder of the store as the nursery file names it.</param>
    /// <param name="channels">Channels.</param>
    public static StoreQuery? Readings(Review review, string store, ImmutableArray<string> channels)
    {
        ArgumentNullException.ThrowIfNull(review);
        SensorReport[] read = [.. review.Sensors.Where(s => channels.Contains(s.Channel)).DistinctBy(s => (s.Source, s.Channel, s.Sensor))];
        if (read.Length == 0)
        {
            return null;
        }

        string[] folders = [.. read.Select(s => $"{store}/readings/house={HouseOf(review, s.Source)}/source={s.Source}").Distinct(StringComparer.Ordinal)];
        string[] columns = [.. read.Select(s => s.Sensor.Length == 0 ? s.Channel : $"{s.Channel}@{s.Sensor}").Distinct(StringComparer.Ordinal)];
        (string from, string to) = (Utc(review.Period.From), Utc(review.Period.To));
        string paths = string.Join(",\n  ", folders.Select(f => Quoted($"{f}/year=*/part.parquet")));
        string sql = $"""
            select time_bucket(interval 1 hour, utc) as hour, {string.Join(", ", columns.Select(c => $"avg({Name(c)}) as {Name(c)}"))}
            from read_parquet([
              {paths}], union_by_name = true, hive_types_autocast = false)
            where utc >= {Quoted(from)} and utc < {Quoted(to)}
            group by hour order by hour;
            """;
        StringBuilder python = new("import pandas as pd\n");
        for (int i = 0; i < folders.Length; i++)
        {
            python.Append(i == 0 ? "read = " : "read = pd.concat([read, ").Append("pd.read_parquet(").Append(Text(folders[i])).Append(i == 0 ? ")\n" : ")])\n");
        }

        python.Append($"read = read[(read.utc >= {Text(from)}) & (read.utc < {Text(to)})].set_index(\"utc\")\n");
        python.Append($"hourly = read[[{string.Join(", ", columns.Select(Text))}]].resample(\"1h\").mean()");
        return new StoreQuery(sql, python.ToString());
    }

    /// <summary>The records of a kind in the period of a review; null where the review counts none.</summary>
    /// <param name="review">The review.</param>
    /// <param name="store">Folder of the store as the nursery file names it.</param>
    /// <param name="kind">Kind of record.</param>
    public static StoreQuery? Records(Review review, string store, RecordKind kind)
    {
        ArgumentNullException.ThrowIfNull(review);
        string word = RecordKinds.WordOf(kind);
        if (review.Records?.Kinds.GetValueOrDefault(word) is not { Count: > 0 })
        {
            return null;
        }

        (string from, string to) = (Utc(review.Period.From), Utc(review.Period.To));
        string sql = $"""
            select * from read_parquet({Quoted($"{store}/records/house=*/kind={word}/source=*/part.parquet")}, union_by_name = true, hive_types_autocast = false)
            where house in ({Quoted(review.House.Id)}, 'nursery') and utc >= {Quoted(from)} and utc < {Quoted(to)}
            order by utc;
            """;
        string python = $"""
            import pandas as pd
            read = pd.read_parquet({Text($"{store}/records/house={review.House.Id}/kind={word}")})
            read = read[(read.utc >= {Text(from)}) & (read.utc < {Text(to)})]
            """;
        return new StoreQuery(sql, python);
    }

    private static string HouseOf(Review review, string source)
        => review.Imports.FirstOrDefault(f => f.Source == source && f.House == review.House.Id)?.House
            ?? review.Imports.FirstOrDefault(f => f.Source == source)?.House
            ?? review.House.Id;

    private static string Utc(OffsetDateTime time) => InstantPattern.General.Format(time.ToInstant());

    private static string Quoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";

    private static string Name(string column) => $"\"{column.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static string Text(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
