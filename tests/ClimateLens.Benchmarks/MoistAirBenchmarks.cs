using BenchmarkDotNet.Attributes;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Benchmarks;

/// <summary>Whole columns of moist-air quantities: a week and a year of five-minute readings.</summary>
public class MoistAirBenchmarks
{
    private double[] _temperatureC = [];
    private double[] _relativeHumidityPct = [];
    private double[] _result = [];

    /// <summary>Readings.</summary>
    [Params(2_016, 105_120)]
    public int Count { get; set; }

    /// <summary>Makes plausible readings.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _temperatureC = [.. Enumerable.Range(0, Count).Select(i => 18 + (5 * Math.Sin(i / 46.0)))];
        _relativeHumidityPct = [.. Enumerable.Range(0, Count).Select(i => 80 - (15 * Math.Sin(i / 46.0)))];
        _result = new double[Count];
    }

    /// <summary>Dew point.</summary>
    [Benchmark]
    public void DewPoint() => MoistAirColumns.DewPointC(_temperatureC, _relativeHumidityPct, _result);

    /// <summary>VPD.</summary>
    [Benchmark]
    public void VapourPressureDeficit() => MoistAirColumns.VapourPressureDeficitKPa(_temperatureC, _relativeHumidityPct, _result);
}
