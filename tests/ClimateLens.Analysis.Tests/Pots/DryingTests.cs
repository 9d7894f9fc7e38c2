using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Statistics;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Pots;

/// <summary>Drying learned from checks without a watering between them, and its forecast against "same as yesterday".</summary>
public sealed class DryingTests
{
    /// <summary>Benches that lose that many levels a day by the drying power of a steady air, watered at nine whenever they reach 2.</summary>
    private static SyntheticHouse Drying(double perDay, double noise, int seed, int firstDay = -9, bool log = true)
    {
        var random = new SeededRandom((ulong)seed);
        SyntheticHouse house = CheckedHouse.Dry;
        foreach (string bench in (string[])["A", "B"])
        {
            double level = bench == "A" ? 4 : 3.4;
            for (int day = firstDay; day < 7; day++)
            {
                house = house.Check(day, 8, 0, bench, "1", Seen(level - (perDay * 8 / 24)));
                if (level - (perDay * 9 / 24) < 2.2)
                {
                    house = log ? house.Water(day, 9, bench) : house;
                    level = 4 + (perDay * 9 / 24);
                }

                house = house.Check(day, 15, 0, bench, "1", Seen(level - (perDay * 15 / 24)));
                level -= perDay;
            }
        }

        return house;

        double Seen(double level) => Math.Clamp(level + (noise * random.NextNormal()), 1, 5);
    }

    [Fact]
    public void Drying_SteadyAir_FindsTheFallOfADay()
    {
        DryingReport drying = Drying(0.6, 0, 1).Review().Pots!.Drying!;
        Assert.All(drying.Benches, b => Assert.InRange(b.FallADay!.Value, 0.54, 0.66));
    }

    [Fact]
    public void Forecast_SteadyDrying_BeatsSameAsYesterdayAndComesTrue()
    {
        DryingReport drying = Drying(0.6, 0.1, 2).Review().Pots!.Drying!;
        Assert.True(drying.Score!.Skill > 0.5, $"{drying.Score}");
        BenchDrying a = drying.Benches.First(b => b.Morning is not null);
        Assert.InRange(a.Last!.Level - a.Afternoon!.Level.Value, 0.4, 0.8); // a day's fall, from 15:00 to 15:00
        Assert.Equal(new LocalDate(2025, 10, 20), a.Morning!.At.Date);
    }

    [Fact]
    public void Forecast_YesterdayIsTheBetterGuess_IsNotShownAndSaysSo()
    {
        // The same levels every day, since somebody waters at night and writes nothing down: yesterday is exactly right, drying on is not.
        SyntheticHouse house = CheckedHouse.Dry;
        for (int day = -9; day < 7; day++)
        {
            house = house.Check(day, 8, 0, "A", "1", 3.5).Check(day, 15, 0, "A", "1", 2.5);
        }

        Review review = house.With(new PotRules { BandLow = 2.4, BandHigh = 4 }).Review();
        DryingReport drying = review.Pots!.Drying!;
        Assert.True(drying.Score is { Skill: null, RmseYesterday: 0, Rmse: > 0.3 }, $"{drying.Score}");
        Assert.All(drying.Benches, b => Assert.Null(b.Morning));
        Assert.DoesNotContain(review.Findings, f => f.Id == "waterInTheMorning");
        Assert.Contains("\"same as yesterday\" was no worse", review.NotKnown.Single(u => u.What == "pots.drying.forecast").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Forecast_BenchWateredSinceItsLastCheck_IsNotKnown()
    {
        SyntheticHouse house = Drying(0.6, 0.1, 2);
        DryingReport plain = house.Review().Pots!.Drying!;
        string bench = plain.Benches.First(b => b.Morning is not null).Bench;
        DryingReport watered = house.Water(6, 18, bench).Review().Pots!.Drying!;
        Assert.Null(watered.Benches.Single(b => b.Bench == bench).Morning);
    }

    [Fact]
    public void WaterInTheMorning_BenchThatWouldFallBelowTheBand_IsNamed()
    {
        // By the last afternoon bench A stands at about 2.4 and loses 0.6 a day.
        SyntheticHouse house = Drying(0.6, 0.05, 3);
        DryingReport drying = house.Review().Pots!.Drying!;
        BenchDrying driest = drying.Benches.Where(b => b.Afternoon is not null).MinBy(b => b.Afternoon!.Level.Value)!;
        double level = driest.Afternoon!.Level.Value;
        Assert.True(level is > 1.05 and < 4.4, $"{level}");
        Assert.NotNull(house.With(new PotRules { BandLow = level + 0.05, BandHigh = 4.5 }).Finds("waterInTheMorning"));
        Assert.Null(house.With(new PotRules { BandLow = level - 0.05, BandHigh = 4.5 }).Finds("waterInTheMorning"));
    }

    [Fact]
    public void Drying_FewChecks_IsNotKnownAndSaysSo()
    {
        Review review = CheckedHouse.Dry.Check(1, 8, 0, "A", "1", 3).Check(1, 15, 0, "A", "1", 2.8).Review();
        Assert.Null(review.Pots!.Drying);
        Assert.Contains(review.NotKnown, u => u.What == "pots.drying");
    }

    [Fact]
    public void Drying_RiseThatNoLogHas_IsNoStretch()
    {
        DryingReport logged = Drying(0.6, 0, 1).Review().Pots!.Drying!, unlogged = Drying(0.6, 0, 1, log: false).Review().Pots!.Drying!;
        Assert.All(unlogged.Benches, b => Assert.InRange(b.FallADay!.Value, 0.5, 0.7));
        Assert.True(unlogged.Stretches <= logged.Stretches + 2, $"{unlogged.Stretches} {logged.Stretches}");
    }

    [Fact]
    public void Records_OtherKindsOnly_LeavePotsUnknown()
        => Assert.Null(CheckedHouse.Dry.Record(RecordKind.Scouting, 1, 9, ("symptom", "rot"), ("count", "1")).Review().Pots);
}
