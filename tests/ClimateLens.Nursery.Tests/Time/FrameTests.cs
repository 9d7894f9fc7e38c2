using System.Collections.Immutable;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Time;

public class FrameTests
{
    private static readonly TimeAxis Axis = new(Instant.FromUtc(2025, 10, 13, 0, 0), Duration.FromMinutes(5), 3, DateTimeZone.Utc);
    private static readonly ColumnKey Temperature = new("airTemperature");
    private static readonly ImmutableArray<double> Values = [20, double.NaN, 21];
    private static readonly ImmutableArray<QualityFlag> Flags = [QualityFlag.Pass, QualityFlag.Missing, QualityFlag.Suspect];

    [Fact]
    public void Frame_WithAColumn_LeavesTheOneBeforeAsItWas()
    {
        Frame empty = new(Axis);
        Frame one = empty.With(Temperature, Values, Flags);
        Frame two = one.With(new ColumnKey("relativeHumidity"), Values, Flags);

        Assert.False(empty.Has(Temperature));
        Assert.Single(one.Columns);
        Assert.Equal(2, two.Columns.Count());
        Assert.Equal(Values, one.Values(Temperature));
        Assert.Equal(Flags, one.Flags(Temperature));
    }

    [Fact]
    public void Frame_WithOtherFlags_KeepsValuesAndTheFrameBefore()
    {
        Frame before = new Frame(Axis).With(Temperature, Values, Flags);
        ImmutableArray<QualityFlag> other = [QualityFlag.Fail, QualityFlag.Missing, QualityFlag.Pass];
        Frame after = before.WithFlags(Temperature, other);

        Assert.Equal(Flags, before.Flags(Temperature));
        Assert.Equal(other, after.Flags(Temperature));
        Assert.Equal(Values, after.Values(Temperature));
    }

    [Fact]
    public void Frame_WithAColumnThatExists_Refuses()
    {
        Frame frame = new Frame(Axis).With(Temperature, Values, Flags);
        Assert.Throws<ArgumentException>(() => frame.With(Temperature, [1, 2, 3], Flags));
    }

    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 2)]
    [InlineData(4, 4)]
    [InlineData(0, 0)]
    public void Frame_WithAColumnOfAnotherLength_Refuses(int values, int flags)
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => new Frame(Axis).With(
            Temperature, [.. new double[values]], [.. Enumerable.Repeat(QualityFlag.Pass, flags)]));
        Assert.Contains("3 steps", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Frame_WithFlagsOfAnotherLength_Refuses()
        => Assert.Throws<ArgumentException>(() => new Frame(Axis).With(Temperature, Values, Flags).WithFlags(Temperature, [QualityFlag.Pass]));

    [Fact]
    public void Frame_AskedForAnUnknownColumn_Throws()
    {
        Assert.Throws<KeyNotFoundException>(() => new Frame(Axis).Values(Temperature));
        Assert.Throws<KeyNotFoundException>(() => new Frame(Axis).WithFlags(Temperature, Flags));
    }

    [Fact]
    public void Columns_AddedInAnyOrder_StandInOrdinalOrder()
    {
        ColumnKey[] keys = [new("rain"), new("airTemperature", "B"), new("airTemperature"), new("airTemperature", "A")];
        Frame frame = keys.Aggregate(new Frame(Axis), (f, k) => f.With(k, Values, Flags));
        Assert.Equal(["airTemperature", "airTemperature@A", "airTemperature@B", "rain"], frame.Columns.Select(c => c.ToString()));
        Assert.Equal(["", "A", "B"], frame.Of("airTemperature").Select(c => c.Sensor));
    }

    [Theory]
    [InlineData("airTemperature", "")]
    [InlineData("airTemperature", "A")]
    [InlineData("valve", "bench_4-b")]
    public void ColumnKey_Written_ReadsBack(string channel, string sensor)
    {
        ColumnKey key = new(channel, sensor);
        Assert.Equal(key, ColumnKey.Parse(key.ToString()));
    }

    [Theory]
    [InlineData(QualityFlag.Pass, 1)]
    [InlineData(QualityFlag.NotEvaluated, 2)]
    [InlineData(QualityFlag.Suspect, 3)]
    [InlineData(QualityFlag.Fail, 4)]
    [InlineData(QualityFlag.Missing, 9)]
    public void QualityFlag_EveryOne_HasItsQartodCode(QualityFlag flag, int code)
        // U.S. IOOS, Manual for Real-Time Oceanographic Data Quality Control Flags, version 1.2, table of flags.
        => Assert.Equal(code, (int)flag);
}
