using BenchmarkDotNet.Attributes;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;

namespace ClimateLens.Benchmarks;

/// <summary>One house-week of the sample logs: load, review, and write as JSON.</summary>
[MemoryDiagnoser]
public class HouseWeekBenchmarks : IDisposable
{
    private ReadingStore? _store;
    private NurserySettings? _nursery;
    private HouseInput? _input;
    private Review? _review;

    /// <summary>Imports the sample into its own store beside the nursery file.</summary>
    [GlobalSetup]
    public void Setup()
    {
        string file = WholeProcess.SampleNursery();
        _nursery = NurseryFileReader.Read(file);
        _store = ReadingStore.Open(_nursery, Path.GetDirectoryName(file)!);
        _store.Import();
        _input = Load();
        _review = Review();
    }

    /// <summary>From the Parquet store.</summary>
    [Benchmark]
    public HouseInput Load() => _store!.Load(_nursery!.Houses[0], new IsoWeek(2025, 42).In(_nursery.Zone), ReviewPipeline.RunIn, ReviewPipeline.History);

    /// <summary>All stages.</summary>
    [Benchmark]
    public Review Review() => ReviewPipeline.Run(_input!);

    /// <summary>review.json.</summary>
    [Benchmark]
    public byte[] Json() => ReviewJson.Write(_review!);

    /// <inheritdoc/>
    [GlobalCleanup]
    public void Dispose()
    {
        _store?.Dispose();
        GC.SuppressFinalize(this);
    }
}
