using System.Globalization;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Store.PartFile;
using ClimateLens.Nursery.Time;
using CsCheck;
using DuckDB.NET.Data;

namespace ClimateLens.Logs.Tests;

/// <summary>Parts, written by our own writer, held to two readers that know nothing of it.</summary>
public sealed class PartFileTests : IDisposable
{
    private const int GroupRows = 500;
    private static readonly string[] Names = ["airTemperature", "relativeHumidity"];
    private readonly string _folder = Directory.CreateTempSubdirectory("climatelens-part-").FullName;

    private static readonly Gen<double> Coarse = Gen.Int[-20, 20].Select(n => n / 10.0);
    private static readonly Gen<double> Value = Gen.Frequency((6, Coarse), (1, Gen.Const(double.NaN)), (1, Gen.Int[0, 3].Select(i => new[] { 0.0, -0.0, double.Epsilon, double.MaxValue }[i])), (1, Gen.Double[-50, 50]));
    private static readonly Gen<double[]> Column = Gen.Frequency(
        (4, Value.Array[1, 1300]),
        (1, Gen.Double[-50, 50].Array[1, 1300]),
        (1, Gen.Const(double.NaN).Array[1, 1300]),
        (1, Gen.Const(7.5).Array[1, 1300]));

    [Fact]
    public void Part_OfAnyValues_IsReadBackBitForBit()
        => Gen.Select(Column, Gen.Int[0, 4]).Sample(
            (column, step) =>
            {
                YearRows rows = Rows(column, step);
                string path = Write(rows);
                using var stream = File.OpenRead(path);
                (YearRows read, List<SourceFile> files) = ReadingPart.Read(stream);
                Assert.Equal(2, files.Count);
                Assert.Equal(rows.Count, read.Count);
                for (int i = 0; i < rows.Count; i++)
                {
                    Assert.Equal((rows.Utc[i], rows.File[i]), (read.Utc[i], read.File[i]));
                    Assert.Equal(Bits(rows.Columns[0][i]), Bits(read.Columns[0][i]));
                    Assert.Equal(Bits(rows.Columns[1][i]), Bits(read.Columns[1][i]));
                }
            },
            iter: 60, threads: 1);

    [Fact]
    public void Part_OfAnyValues_IsReadByDuckDb()
    {
        using DuckDBConnection duck = Duck();
        Column.Sample(
            column =>
            {
                string path = Write(Rows(column, 1));
                using DuckDBCommand command = duck.CreateCommand();
                command.CommandText = $"select airTemperature from read_parquet('{path}') order by utc";
                using DuckDBDataReader reader = command.ExecuteReader();
                foreach (double value in column)
                {
                    Assert.True(reader.Read());
                    Assert.Equal(Bits(value), Bits(reader.IsDBNull(0) ? double.NaN : reader.GetDouble(0)));
                }

                Assert.False(reader.Read());
            },
            iter: 40, threads: 1);
    }

    [Theory]
    [InlineData(40, "RLE_DICTIONARY")]
    [InlineData(100_000, "PLAIN")]
    public void Column_IsADictionary_WhereFewValuesDiffer(int values, string encoding)
    {
        string path = Write(Rows([.. Enumerable.Range(0, 1200).Select(i => (i * 7919 % values) / 10.0)], 1));
        using DuckDBConnection duck = Duck();
        string[] encodings = Texts(duck, $"select encodings from parquet_metadata('{path}') where path_in_schema = 'airTemperature'");
        Assert.Equal(3, encodings.Length);
        Assert.All(encodings, e => Assert.Equal(encoding == "RLE_DICTIONARY", e.Contains("RLE_DICTIONARY", StringComparison.Ordinal)));
    }

    [Fact]
    public void Groups_TellTheirSpan_SoThatReadersPassOverOthers()
    {
        string path = Write(Rows([.. Enumerable.Range(0, 1200).Select(i => i / 10.0)], 1));
        using DuckDBConnection duck = Duck();
        string[] spans = Texts(duck, $"select (stats_min_value || ' ' || stats_max_value || ' ' || stats_null_count) from parquet_metadata('{path}') where path_in_schema = 'utc' order by row_group_id");
        Assert.Equal(
            [
                "2025-07-01 00:00:00+00 2025-07-01 08:19:00+00 0",
                "2025-07-01 08:20:00+00 2025-07-01 16:39:00+00 0",
                "2025-07-01 16:40:00+00 2025-07-01 19:59:00+00 0",
            ],
            spans);
        Assert.Equal(["1200"], Texts(duck, $"select num_rows::varchar from parquet_file_metadata('{path}')"));
    }

    [Fact]
    public void Part_OfTheSameRows_HasTheSameBytes_HoweverTheyCome()
    {
        YearRows rows = Rows([.. Enumerable.Range(0, 1200).Select(i => i % 3 == 0 ? double.NaN : i % 90 / 10.0)], 1);
        byte[] whole = File.ReadAllBytes(Write(rows));
        byte[] pieces = File.ReadAllBytes(Write(rows, 7));
        Assert.Equal(whole, pieces);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static long Bits(double value) => double.IsNaN(value) ? long.MinValue + 1 : BitConverter.DoubleToInt64Bits(value);

    private static DuckDBConnection Duck()
    {
        var duck = new DuckDBConnection("DataSource=:memory:");
        duck.Open();
        return duck;
    }

    private static string[] Texts(DuckDBConnection duck, string query)
    {
        using DuckDBCommand command = duck.CreateCommand();
        command.CommandText = query;
        using DuckDBDataReader reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read())
        {
            texts.Add(Convert.ToString(reader.GetValue(0), CultureInfo.InvariantCulture)!);
        }

        return [.. texts];
    }

    /// <summary>Rows a minute apart or, with a step of 0, at odd distances; every third of the second file.</summary>
    private static YearRows Rows(double[] column, int step)
    {
        var rows = new YearRows(Names);
        long utc = Micros.Of(new DateTime(2025, 7, 1, 0, 0, 0, DateTimeKind.Utc));
        for (int i = 0; i < column.Length; i++)
        {
            rows.Append(utc, i % 3 == 2 ? 1 : 0, i + 2, [column[i], i % 5 == 0 ? double.NaN : i % 11]);
            utc += step == 0 ? (i * 37 % 101) + 1 : step * 60_000_000L;
        }

        return rows;
    }

    private string Write(YearRows rows, int pieces = 1)
    {
        string path = Path.Combine(_folder, "part.parquet");
        using var writer = new ReadingPartWriter(File.Create(path), Names, GroupRows, new ColumnWriter(), new BlockPool(Names, 2), [0, 1]);
        int done = 0;
        for (int piece = 1; piece <= pieces; piece++)
        {
            int end = rows.Count * piece / pieces;
            var block = new YearRows(Names);
            block.Append(rows, done, end - done, rows.Count);
            writer.Add(block);
            done = end;
        }

        var info = new PartInfo("1", "climate", "UTC", StampSide.Instant, "", []);
        writer.Finish(info, [new SourceFile("a.csv", "aa"), new SourceFile("b.csv", "bb")]);
        return path;
    }
}
