using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using CsCheck;

namespace ClimateLens.Analysis.Tests;

public sealed class StrayedStampsTests
{
    private const long Second = 1_000_000;
    private const long FiveMinutes = 300 * Second;

    private static readonly SyntheticHouse Empty = SyntheticHouse.Week("2025-W42", runInDays: 0);
    private static readonly long Start = Empty.Input.Period.Start.ToUnixTimeTicks() / 10;

    [Fact]
    public void Align_StampsCutToMinutes_PutEachReadingInItsStep()
    {
        // 0:00, 0:04, 0:09, 0:15: what a logger makes of five-minute readings that it takes a moment early and cuts to whole minutes.
        int[] early = [0, 1, 1, 0, 0, 1, 0];
        ReadingBatch cut = Rows(i => early[i % early.Length] * 60 * Second);
        HousePeriod period = Align(cut);
        Assert.Equal(Enumerable.Range(0, 12 * 24).Select(i => (double)i), Values(period).Take(12 * 24));
        Assert.Contains("stray by up to 60 s around steps of 5 min", Assert.Single(period.Notes.Of(ColumnKey.Parse("airTemperature"))), StringComparison.Ordinal);
    }

    [Fact]
    public void Align_StampsThatJitter_PutEachReadingInItsStep()
        => Gen.Int[0, int.MaxValue].Sample(seed =>
        {
            var random = new Random(seed);
            ReadingBatch jittering = Rows(_ => random.NextInt64(-70, 71) * Second);
            return Values(Align(jittering)).Skip(1).Take(12 * 24 - 2).SequenceEqual(Enumerable.Range(1, (12 * 24) - 2).Select(i => (double)i));
        }, iter: 20);

    [Fact]
    public void Align_AmountsOfStampsCutToMinutes_FallIntoTheirSteps()
    {
        ReadingBatch cut = Rows(i => i % 3 == 1 ? 60 * Second : 0, "waterVolume");
        ImmutableArray<double> values = Align(cut).Frame.Values(ColumnKey.Parse("waterVolume"));
        Assert.Equal(Enumerable.Range(0, 12 * 24).Select(i => (double)i), values.Take(12 * 24));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(60)]
    [InlineData(-60)]
    [InlineData(150)]
    public void Of_EvenStamps_AreLeftAlone(int seconds)
        => Assert.Null(MeantStamps.Of([.. Enumerable.Range(0, 300).Where(i => i % 11 > 2).Select(i => Start + (i * FiveMinutes) + (seconds * Second))], FiveMinutes, Start, out _));

    [Fact]
    public void Of_ClockThatRunsSlow_IsLeftAlone()
        => Assert.Null(MeantStamps.Of([.. Enumerable.Range(0, 2000).Select(i => Start + (i * 301 * Second) + (i % 2 * Second))], FiveMinutes, Start, out _));

    [Fact]
    public void Of_RowsAtAnyTime_AreLeftAlone()
    {
        var random = new Random(7);
        Assert.Null(MeantStamps.Of([.. Enumerable.Range(0, 500).Select(_ => Start + random.NextInt64(0, 86_400 * Second)).Order()], FiveMinutes, Start, out _));
    }

    /// <summary>Readings 0, 1, 2 … of the steps of a day, each stamped some time early.</summary>
    private static ReadingBatch Rows(Func<int, long> early, string column = "airTemperature") => new(
        "1",
        "rows",
        StampSide.Instant,
        300,
        [.. Enumerable.Range(0, 12 * 24).Select(i => Start + (i * FiveMinutes) - early(i))],
        ImmutableSortedDictionary<string, double[]>.Empty.Add(column, [.. Enumerable.Range(0, 12 * 24).Select(i => (double)i)]));

    private static HousePeriod Align(ReadingBatch batch) => Alignment.Align(Empty.WithColumn("climate", "relativeHumidity", _ => 80).WithBatch(batch).Input);

    private static ImmutableArray<double> Values(HousePeriod period) => period.Frame.Values(ColumnKey.Parse("airTemperature"));
}
