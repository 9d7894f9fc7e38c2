using ClimateLens.Analysis.Checks;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using CsCheck;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

/// <summary>What is ours beyond the generic tests. Expected flags are worked out by hand.</summary>
public sealed class ChecksTests
{
    private static readonly Duration FiveMinutes = Duration.FromMinutes(5);
    private static readonly Channel Temperature = ChannelCatalogue.Get("airTemperature");
    private static readonly Channel Humidity = ChannelCatalogue.Get("relativeHumidity");

    [Fact]
    public void SpareNeighbours_LoneSpike_FlagsOnlyTheSpike()
    {
        double[] values = [20, 20, 20, 60, 20, 20, 20];
        QualityFlag[] flags = new QualityFlag[7];
        Spike.Test(values, 3, 6, flags);
        Assert.Equal([2, 1, 4, 4, 4, 1, 2], flags.Select(f => (int)f));
        Spike.SpareNeighbours(values, flags);
        Assert.Equal([2, 1, 2, 4, 2, 1, 2], flags.Select(f => (int)f));
    }

    [Fact]
    public void SpareNeighbours_Plateau_KeepsBothFlags()
    {
        double[] values = [20, 20, 60, 60, 20, 20];
        QualityFlag[] flags = new QualityFlag[6];
        Spike.Test(values, 3, 6, flags);
        QualityFlag[] before = [.. flags];
        Spike.SpareNeighbours(values, flags);
        Assert.Equal(before, flags);
    }

    [Fact]
    public void Flags_JumpAtOnceTheLimit_IsSuspectAndJustUnderIsNot()
    {
        Assert.Equal(QualityFlag.Suspect, SeriesChecks.Flags([20, 20.1, 23.2, 20.1, 20], Temperature, FiveMinutes)[2]);
        Assert.Equal(QualityFlag.Pass, SeriesChecks.Flags([20, 20.1, 23.0, 20.1, 20], Temperature, FiveMinutes)[2]);
        Assert.Equal(QualityFlag.Fail, SeriesChecks.Flags([20, 20.1, 26.2, 20.1, 20], Temperature, FiveMinutes)[2]);
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(5, 3)]
    [InlineData(20, 6)]
    [InlineData(45, 9)]
    public void SpikeLimit_Step_GrowsAsTheRootOfTimeFromFiveMinutesOn(int minutes, double expectedK)
        => Assert.Equal(expectedK, SeriesChecks.SpikeLimit(Temperature, Duration.FromMinutes(minutes)), 12);

    [Fact]
    public void Flags_StuckTwelveHours_FailsAllOfTheStretch()
    {
        double[] values = Wavy(500);
        Array.Fill(values, 18.0, 100, 146);
        QualityFlag[] flags = SeriesChecks.Flags(values, Temperature, FiveMinutes);
        Assert.All(flags[100..246], f => Assert.Equal(QualityFlag.Fail, f));
        Assert.Equal(QualityFlag.Pass, flags[99]);
        Assert.Equal(QualityFlag.Pass, flags[246]);
    }

    [Fact]
    public void Flags_StuckSixHours_IsSuspectAndOneStepLessIsNot()
    {
        double[] six = Wavy(300), less = Wavy(300);
        Array.Fill(six, 18.0, 100, 73);
        Array.Fill(less, 18.0, 100, 72);
        Assert.All(SeriesChecks.Flags(six, Temperature, FiveMinutes)[100..173], f => Assert.Equal(QualityFlag.Suspect, f));
        Assert.All(SeriesChecks.Flags(less, Temperature, FiveMinutes), f => Assert.Equal(QualityFlag.Pass, f));
    }

    [Fact]
    public void Flags_TwoEqualReadingsEitherSideOfALongGap_ProveNothing()
    {
        double[] values = Wavy(300);
        Array.Fill(values, double.NaN, 101, 100);
        values[100] = values[201] = 18;
        values[202] = 18.5;
        QualityFlag[] flags = SeriesChecks.Flags(values, Temperature, FiveMinutes);
        Assert.NotEqual(QualityFlag.Suspect, flags[201]);
        Assert.NotEqual(QualityFlag.Fail, flags[201]);
    }

    [Fact]
    public void Flags_HumidityAtSaturationAllNight_IsSuspectNotFailed()
    {
        double[] values = [.. Wavy(100).Select(v => v + 60), .. Enumerable.Repeat(100.0, 180), .. Wavy(100).Select(v => v + 60)];
        QualityFlag[] flags = SeriesChecks.Flags(values, Humidity, FiveMinutes);
        Assert.All(flags[101..279], f => Assert.Equal(QualityFlag.Suspect, f));
    }

    [Fact]
    public void Flags_HumidityStuckBelowSaturation_Fails()
    {
        double[] values = [.. Wavy(100).Select(v => v + 60), .. Enumerable.Repeat(98.0, 180), .. Wavy(100).Select(v => v + 60)];
        Assert.All(SeriesChecks.Flags(values, Humidity, FiveMinutes)[101..279], f => Assert.Equal(QualityFlag.Fail, f));
    }

    [Theory]
    [InlineData(100.4, QualityFlag.Pass)]
    [InlineData(100.6, QualityFlag.Suspect)]
    [InlineData(104.0, QualityFlag.Suspect)]
    [InlineData(104.1, QualityFlag.Fail)]
    [InlineData(-0.1, QualityFlag.Fail)]
    public void Flags_HumidityAtItsLimits_FollowTheCatalogue(double humidityPct, QualityFlag expected)
        => Assert.Equal(expected, SeriesChecks.Flags([humidityPct, humidityPct + 0.001, humidityPct], Humidity, FiveMinutes)[0]);

    [Fact]
    public void SlidingRange_AnySeries_EqualsTheRangeOfTheWindow()
        => Gen.Select(Gen.OneOf(Gen.Double[-5, 5], Gen.Const(double.NaN)).Array[1, 60], Gen.Int[1, 12]).Sample((values, window) =>
        {
            SlidingRange range = new(window);
            for (int i = 0; i < values.Length; i++)
            {
                range.Push(values[i]);
                double[] there = [.. values[Math.Max(0, i - window + 1)..(i + 1)].Where(v => !double.IsNaN(v))];
                Assert.Equal(there.Length, range.Present);
                Assert.Equal(there.Length == 0 ? double.NaN : there.Max() - there.Min(), range.Range);
            }
        });

    /// <summary>A series that never stands still and never jumps.</summary>
    private static double[] Wavy(int count) => [.. Enumerable.Range(0, count).Select(i => 20 + Math.Sin(i / 10.0))];
}
