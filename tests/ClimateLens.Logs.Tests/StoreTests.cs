using System.Globalization;
using System.Text;
using DuckDB.NET.Data;

namespace ClimateLens.Logs.Tests;

public sealed class StoreTests
{
    [Fact]
    public void Parts_AreReadByDuckDb_ValueForValue()
    {
        using var nursery = new TestNursery(TestNursery.Climate, "UTC");
        var text = new StringBuilder("time,temp,rh\n");
        for (int i = 0; i < 3000; i++)
        {
            string time = new DateTime(2024, 12, 28).AddMinutes(5 * i).ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"{time},{(i % 7 == 0 ? "-999" : (i * 0.013).ToString("F3", CultureInfo.InvariantCulture))},{i % 101}\n");
        }

        nursery.Write("a.csv", text.ToString());
        nursery.Import();
        var batch = Assert.Single(nursery.Load().Batches);

        using DuckDBConnection duck = Open();
        using DuckDBCommand command = duck.CreateCommand();
        command.CommandText = $"select epoch_us(utc), airTemperature, relativeHumidity, house, source, year, typeof(utc) from read_parquet('{nursery.Store}/readings/**/part.parquet', hive_partitioning = true) order by utc";
        using DuckDBDataReader reader = command.ExecuteReader();
        int row = 0;
        for (; reader.Read(); row++)
        {
            Assert.Equal(batch.UtcMicros[row], reader.GetInt64(0));
            Assert.Equal(batch.Columns["airTemperature"][row], reader.IsDBNull(1) ? double.NaN : reader.GetDouble(1));
            Assert.Equal(batch.Columns["relativeHumidity"][row], reader.GetDouble(2));
            Assert.Equal(("1", "climate", "TIMESTAMP WITH TIME ZONE"), (reader.GetValue(3).ToString(), reader.GetString(4), reader.GetString(6)));
        }

        Assert.Equal(3000, row);
        Assert.Equal(3000, batch.UtcMicros.Length);
    }

    [Theory]
    [InlineData("2025-07-01T10:00:00", "2025-07-01T10:05:00")]
    [InlineData("2025-07-01T10:00:00.123456", "2025-07-01T10:05:00.999999")]
    [InlineData("1969-07-01T10:00:00.000001", "1969-07-01T10:05:00.5")]
    public void Parts_AskedForATime_GiveItsRows_AndTheirStatisticsAreTheStamps(string first, string second)
    {
        using var nursery = new TestNursery(TestNursery.Climate, "UTC");
        nursery.Write("a.csv", $"time,temp,rh\n{first},20,80\n{second},21,81\n");
        nursery.Import();
        string part = $"{nursery.Store}/readings/house=1/source=climate/year={first[..4]}/part.parquet";
        using DuckDBConnection duck = Open();
        Assert.Equal(2L, One(duck, $"select count(*) from read_parquet('{part}') where utc >= timestamptz '{first}Z' and utc <= timestamptz '{second}Z'"));
        Assert.Equal(1L, One(duck, $"select count(*) from read_parquet('{part}') where utc > timestamptz '{first}Z'"));
        Assert.Equal(1L, One(duck, $"select count(*) from read_parquet('{part}') where utc < timestamptz '{second}Z'"));
        Assert.Equal(true, One(duck, $"select bool_and(stats_min_value::timestamptz = timestamptz '{first}Z' and stats_max_value::timestamptz = timestamptz '{second}Z') from parquet_metadata('{part}') where path_in_schema = 'utc'"));
    }

    private static object One(DuckDBConnection duck, string sql)
    {
        using DuckDBCommand command = duck.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()!;
    }

    [Fact]
    public void Parts_TellUnitsZoneAndFiles()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        nursery.Import();

        using DuckDBConnection duck = Open();
        using DuckDBCommand command = duck.CreateCommand();
        command.CommandText = $"select decode(key), decode(value) from parquet_kv_metadata('{nursery.Store}/readings/house=1/source=climate/year=2025/part.parquet')";
        using DuckDBDataReader reader = command.ExecuteReader();
        var metadata = new Dictionary<string, string>();
        while (reader.Read())
        {
            metadata[reader.GetString(0)] = reader.GetString(1);
        }

        Assert.Equal("""{"airTemperature":"Cel","relativeHumidity":"%"}""", metadata["climatelens.units"].ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal));
        Assert.Equal("Europe/London", metadata["climatelens.timeZone"]);
        Assert.Contains("a.csv", metadata["climatelens.files"], StringComparison.Ordinal);
    }

    [Fact]
    public void Open_WhileAnotherHoldsIt_Throws()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        using (ReadingStore held = ReadingStore.Open(nursery.Settings, nursery.Folder))
        {
            Assert.Throws<StoreLockedException>(() => ReadingStore.Open(nursery.Settings, nursery.Folder));
        }

        using ReadingStore again = ReadingStore.Open(nursery.Settings, nursery.Folder);
        Assert.Empty(again.Sheets);
    }

    [Fact]
    public void Open_WhereNoFolderCanBe_Throws()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("store", "a file in the way");
        Assert.Throws<StoreUnavailableException>(() => ReadingStore.Open(nursery.Settings, nursery.Folder));
    }

    [Fact]
    public void Import_WhereAPartCannotBeWritten_ThrowsAndLeavesTheStore()
    {
        using var nursery = new TestNursery(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n2025-07-01T10:00,20,80\n");
        nursery.Import();
        var before = nursery.StoreFiles();
        nursery.Write("store/readings/house=1/source=climate/year=2024", "a file in the way");
        nursery.Write("b.csv", "time,temp,rh\n2025-07-01T10:05,20,80\n2024-07-01T10:00,20,80\n");

        Assert.Throws<StoreUnavailableException>(nursery.Import);

        File.Delete(Path.Combine(nursery.Store, "readings/house=1/source=climate/year=2024"));
        Assert.Equal(before, nursery.StoreFiles());
        nursery.Import();
        Assert.Equal(3, nursery.Rows().Length);
    }

    private static DuckDBConnection Open()
    {
        var duck = new DuckDBConnection("DataSource=:memory:");
        duck.Open();
        return duck;
    }
}
