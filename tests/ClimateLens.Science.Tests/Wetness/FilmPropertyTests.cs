using ClimateLens.Science.Canopy;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Wetness;
using CsCheck;

namespace ClimateLens.Science.Tests.Wetness;

/// <summary>What holds for the film of water on any foliage in any weather.</summary>
public class FilmPropertyTests
{
    private const int Steps = 120;
    private static readonly FilmParameters Foliage = FilmParameters.PotPlant;

    private static readonly Gen<Weather> Any = Gen.Select(
        Gen.Select(Gen.Double[5, 35], Gen.Double[40, 100], Gen.Double[0, 200], Gen.Double[-15, 3], Gen.Double[0.02, 1]).Array[Steps],
        Gen.Double[-1, 0.5].Array[Steps]).Select((air, water) => new Weather(air, water));

    [Fact]
    public void Film_AnyWeather_IsNeitherNegativeNorMoreThanALeafHolds() => Any.Sample(weather =>
        weather.Run(0.1, out _).All(film => film is >= 0 && film <= Foliage.CapacityMm), iter: 200);

    [Fact]
    public void Account_AnyWeather_Closes() => Any.Sample(weather =>
    {
        weather.Run(0.1, out FilmBudget budget);
        return Math.Abs(budget.ErrorMm) < 1e-9 && budget.WateredMm > 0 && budget.EvaporatedMm >= 0 && budget.CondensedMm >= 0 && budget.DrippedMm >= 0;
    }, iter: 200);

    [Fact]
    public void Account_WithGapsAndAnUnknownStart_Closes() => Gen.Select(Any, Gen.Int[0, Steps - 10], Gen.Int[1, 10]).Sample((weather, gap, length) =>
    {
        weather.AirC.AsSpan(gap, length).Fill(double.NaN);
        double[] film = weather.Run(double.NaN, out FilmBudget budget);
        return double.IsNaN(budget.ErrorMm)
            ? film.All(mm => double.IsNaN(mm) || mm >= WetStates.Default.WetFromMm) // never known, at most known to be wet
            : Math.Abs(budget.ErrorMm) < 1e-9;
    }, iter: 200);

    [Fact]
    public void Film_UnknownStart_IsTheSameFilmOrNoMoreThanThatAndWet() => Gen.Select(Any, Gen.Double[0, 0.2]).Sample((weather, start) =>
    {
        double[] known = weather.Run(start, out _), unknown = weather.Run(double.NaN, out _);
        // The kernel stops at steps of 1e-3 K, from whichever side it came: 7e-6 mm in a step of five minutes.
        return known.Zip(unknown).All(pair => double.IsNaN(pair.Second) || Math.Abs(pair.First - pair.Second) < 2e-5
            || (pair.Second < pair.First && pair.Second >= WetStates.Default.WetFromMm));
    }, iter: 200);

    [Fact]
    public void Film_UnknownStart_IsKnownOnceItHasDriedOrDripped()
    {
        var sunny = new Weather([.. Enumerable.Repeat((24.0, 60.0, 150.0, 0.0, 0.2), Steps)], new double[Steps]);
        double[] film = sunny.Run(double.NaN, out _);
        Assert.True(double.IsNaN(film[0]));
        Assert.Equal(0, film[^1]);
        sunny.Water[1] = 1; // more than a leaf holds
        Assert.InRange(sunny.Run(double.NaN, out _)[1], 0.1, Foliage.CapacityMm);
    }

    /// <summary>Slower air among leaves that close can only hold up drying; the air itself is kept the same here.</summary>
    [Fact]
    public void Drying_MoreCover_IsNeverFaster() => Gen.Select(
        Gen.Select(Gen.Double[5, 35], Gen.Double[40, 97], Gen.Double[0, 200]), Gen.Select(Gen.Double[-10, 2], Gen.Double[0.05, 1]),
        Gen.Double[0, 1], Gen.Double[0, 1]).Sample((air, around, one, other) =>
            StepsToDry(air, around, Math.Max(one, other)) >= StepsToDry(air, around, Math.Min(one, other)), iter: 2000);

    [Fact]
    public void Film_MoreWater_IsNeverThinner() => Gen.Select(Any, Gen.Double[0, 0.2]).Sample((weather, more) =>
    {
        double[] less = weather.Run(0, out _);
        for (int i = 0; i < Steps; i++)
        {
            weather.Water[i] += weather.Water[i] > 0 ? more : 0;
        }

        // A leaf kept wet is colder and gathers more dew or loses less to warmth, never the other way round.
        return weather.Run(0, out _).Zip(less).All(pair => pair.First >= pair.Second - 2e-5);
    }, iter: 200);

    [Fact]
    public void Film_ColdCoverAndDampAir_GathersDew()
    {
        var weather = new Weather([.. Enumerable.Repeat((18.0, 96.0, 0.0, -10.0, 0.1), Steps)], new double[Steps]);
        double[] film = weather.Run(0, out FilmBudget budget);
        // 10 h at -18.33 W/m²: 0.26836 mm, worked out by a separate program with the Hyland-Wexler curve.
        Assert.Equal(0.26836, budget.CondensedMm, 0.001);
        Assert.Equal(Foliage.CapacityMm, film[^1], 9);
        Assert.Equal(budget.CondensedMm - Foliage.CapacityMm, budget.DrippedMm, 9);
    }

    /// <summary>Four at once: gaps, measured leaves, water, capacities and open shares of their own, films known or not at the start.</summary>
    [Fact]
    public void FourAtOnce_AnyWeather_AreToTheLastBitWhatEachIsAlone() => Gen.Select(Any.Array[4], Gen.Int[0, 1 << 16], Gen.Bool).Sample((four, seed, knownStart) =>
    {
        var random = new Random(seed);
        foreach (Weather weather in four)
        {
            weather.CapacityMm = 0.05 + (0.3 * random.NextDouble());
            weather.OpenShare = 0.1 + (0.9 * random.NextDouble());
            weather.AirC.AsSpan(random.Next(Steps - 10), random.Next(10)).Fill(double.NaN);
            weather.MeasuredC.AsSpan(random.Next(Steps - 10), random.Next(10)).Fill(15 + random.Next(10));
        }

        double startMm = knownStart ? 0.02 : double.NaN;
        double[][] leaves = [.. four.Select(_ => new double[Steps])], films = [.. four.Select(_ => new double[Steps])];
        FilmBudget first = FoliageFilm.Run(
            four[0].Into(leaves[0], films[0]), four[1].Into(leaves[1], films[1]), four[2].Into(leaves[2], films[2]), four[3].Into(leaves[3], films[3]), 300, Foliage, startMm);
        return four.Select((weather, i) => (Alone: weather.Alone(startMm, out FilmBudget budget), Budget: budget, i)).All(one =>
            one.Alone.LeafC.SequenceEqual(leaves[one.i]) && one.Alone.FilmMm.SequenceEqual(films[one.i]) && (one.i > 0 || one.Budget == first));
    }, iter: 300);

    private static int StepsToDry((double C, double Pct, double Light) air, (double Above, double Speed) around, double cover)
    {
        double speed = around.Speed * CanopyShelter.AirSpeedShare(cover);
        var weather = new Weather([.. Enumerable.Repeat((air.C, air.Pct, air.Light, around.Above, speed), Steps)], new double[Steps]);
        return weather.Run(0.1, out _).Count(film => film > 0);
    }

    private sealed class Weather((double C, double Pct, double Light, double Above, double Speed)[] air, double[] water)
    {
        private readonly double[] _pct = [.. air.Select(a => a.Pct)], _light = [.. air.Select(a => a.Light)], _aboveC = [.. air.Select(a => a.C + a.Above)], _speed = [.. air.Select(a => a.Speed)];

        public double[] AirC { get; } = [.. air.Select(a => a.C)];

        public double[] Water { get; } = [.. water.Select(mm => Math.Max(0, mm))];

        public double[] MeasuredC { get; } = [.. Enumerable.Repeat(double.NaN, Steps)];

        public double CapacityMm { get; set; } = Foliage.CapacityMm;

        public double OpenShare { get; set; } = 1;

        public double[] Run(double startMm, out FilmBudget budget) => Alone(startMm, out budget).FilmMm;

        public (double[] LeafC, double[] FilmMm) Alone(double startMm, out FilmBudget budget)
        {
            double[] leafC = new double[Steps], film = new double[Steps];
            budget = FoliageFilm.Run(Climate, Water, 300, Foliage with { CapacityMm = CapacityMm }, startMm, leafC, film);
            return (leafC, film);
        }

        public FilmRun Into(double[] leafC, double[] filmMm) => new(Climate, Water, CapacityMm, leafC, filmMm);

        private LeafClimate Climate => new(AirC, _pct, _light, _aboveC, _speed, MeasuredC, Enumerable.Repeat(OpenShare, Steps).ToArray());
    }
}
