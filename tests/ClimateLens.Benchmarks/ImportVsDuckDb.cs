using System.Globalization;
using DuckDB.NET.Data;
using NodaTime;

namespace ClimateLens.Benchmarks;

/// <summary>
/// A generated wide CSV into the Parquet store with all checks, against DuckDB copying the same file to Parquet with zstd:
/// both as whole processes, in turns, on the same machine and cores. The program is measured as it is published, and as it is built.
/// </summary>
internal static class ImportVsDuckDb
{
    private const int DefaultRows = 2_000_000;
    private const int DefaultPairs = 5;

    /// <summary><c>import-vs-duckdb [ROWS] [PAIRS]</c>.</summary>
    public static int Run(string[] args)
    {
        int rows = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : DefaultRows;
        int pairs = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : DefaultPairs;
        using var program = new PublishedProgram();
        using var nursery = new GeneratedNursery();
        string csv = nursery.Export("climate.csv", Instant.FromUtc(2021, 1, 1, 0, 0), rows, stepMinutes: 1);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{rows} rows by 12 columns, {new FileInfo(csv).Length / 1e6:0} MB, {Environment.ProcessorCount} cores"));
        List<ProcessCost> ours = [], built = [], theirs = [];
        for (int i = 0; i < pairs; i++)
        {
            nursery.RemoveStore();
            built.Add(MeasuredProcess.ClimateLens("import", nursery.File, "--quiet"));
            nursery.RemoveStore();
            ours.Add(program.Run("import", nursery.File, "--quiet"));
            theirs.Add(MeasuredProcess.Benchmark("duckdb-copy", csv, nursery.PathOf("duckdb.parquet")));
        }

        Console.WriteLine(MeasuredProcess.Describe("import", ours));
        Console.WriteLine(MeasuredProcess.Describe("import, as built", built));
        Console.WriteLine(MeasuredProcess.Describe("duckdb", theirs));
        Console.WriteLine($"import beside duckdb: {MeasuredProcess.Ratio(ours, theirs)}");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"store {nursery.StoreBytes() / 1e6:0.0} MB, DuckDB's file {new FileInfo(nursery.PathOf("duckdb.parquet")).Length / 1e6:0.0} MB"));
        return 0;
    }

    /// <summary><c>duckdb-copy CSV PARQUET</c>: the other side.</summary>
    public static int Copy(string[] args)
    {
        using var duck = new DuckDBConnection("DataSource=:memory:");
        duck.Open();
        using DuckDBCommand command = duck.CreateCommand();
        command.CommandText = $"copy (select * from read_csv('{args[0]}')) to '{args[1]}' (format parquet, compression zstd)";
        return command.ExecuteNonQuery() > 0 ? 0 : 1;
    }
}
