using BenchmarkDotNet.Attributes;
using ClimateLens.Science.Infection;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Benchmarks;

/// <summary>One draw of a house-week: leaf temperature, film and wet periods over a week of five minutes and two days of run-in.</summary>
[MemoryDiagnoser]
public class FoliageBenchmarks
{
    private const int Steps = 2_016 + 576;
    private readonly double[] _airC = new double[Steps];
    private readonly double[] _humidityPct = new double[Steps];
    private readonly double[] _absorbedWm2 = new double[Steps];
    private readonly double[] _aboveC = new double[Steps];
    private readonly double[] _airSpeedMs = new double[Steps];
    private readonly double[] _wateringMm = new double[Steps];
    private readonly double[] _leafC = new double[Steps];
    private readonly double[] _filmMm = new double[Steps];
    private readonly double[] _wet = new double[Steps];
    private readonly WetPeriod[] _periods = new WetPeriod[Steps];

    /// <summary>Makes days with sun, nights near the dew point and a watering each afternoon.</summary>
    [GlobalSetup]
    public void Setup()
    {
        for (int i = 0; i < Steps; i++)
        {
            double day = Math.Sin((i % 288 - 72) * Math.PI / 144);
            _airC[i] = 18 + (4 * day);
            _humidityPct[i] = 84 - (12 * day);
            _absorbedWm2[i] = Math.Max(0, 120 * day);
            _aboveC[i] = _airC[i] - 8;
            _airSpeedMs[i] = 0.1;
            _wateringMm[i] = i % 288 == 200 ? 0.3 : 0;
        }
    }

    /// <summary>Leaf temperature and film.</summary>
    [Benchmark]
    public double LeafAndFilm()
    {
        var climate = new LeafClimate(_airC, _humidityPct, _absorbedWm2, _aboveC, _airSpeedMs);
        return FoliageFilm.Run(climate, _wateringMm, 300, FilmParameters.PotPlant, 0, _leafC, _filmMm).EndMm;
    }

    /// <summary>Leaf temperature, film, wet states and wet periods: all that a draw repeats.</summary>
    [Benchmark]
    public int WholeDraw()
    {
        LeafAndFilm();
        WetStates.Default.Of(_filmMm, _wet);
        return WetPeriods.Find(_wet, _leafC, 300, WetPeriodRules.Broome, _periods);
    }
}
