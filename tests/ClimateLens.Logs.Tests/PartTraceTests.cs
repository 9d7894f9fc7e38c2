using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Tests;

/// <summary>Half weeks of a part.</summary>
public sealed class PartTraceTests
{
    private static readonly int[] Held = [-1, 0, 1, 3];
    private static readonly double[] One = [1];
    private const long Second = 1_000_000, Day = 86400 * Second;

    /// <summary>2025-10-13 was a Monday; its half weeks begin at 00:00 UTC and on Thursday at 12:00.</summary>
    [Theory]
    [InlineData("2025-10-13T00:00:00Z", 0)]
    [InlineData("2025-10-16T11:59:59Z", 0)]
    [InlineData("2025-10-16T12:00:00Z", 1)]
    [InlineData("2025-10-19T23:59:59Z", 1)]
    [InlineData("2025-10-20T00:00:00Z", 2)]
    [InlineData("2025-10-12T23:59:59Z", -1)]
    public void HalfOf_CountsFromMondays(string stamp, int later)
    {
        int half = PartTrace.HalfOf(Micros.Of(DateTime.Parse(stamp, null, System.Globalization.DateTimeStyles.AdjustToUniversal)));
        Assert.Equal(PartTrace.HalfOf(Micros.Of(new DateTime(2025, 10, 13))) + later, half);
        Assert.Equal(DayOfWeek.Monday, Micros.ToDateTime(PartTrace.StartOf(half - (half % 2))).DayOfWeek);
    }

    [Theory]
    [InlineData(-1L)]
    [InlineData(0L)]
    [InlineData(-86400L * 365 * 1000 * Second)]
    public void StartOf_IsTheFirstStampOfAHalf(long utc)
    {
        int half = PartTrace.HalfOf(utc);
        long start = PartTrace.StartOf(half);
        Assert.InRange(utc, start, start + PartTrace.HalfMicros - 1);
        Assert.Equal((half, half - 1), (PartTrace.HalfOf(start), PartTrace.HalfOf(start - 1)));
    }

    [Theory]
    [InlineData(0, 1, new[] { 0 })]
    [InlineData(0, 0, new int[0])]
    [InlineData(-1, 1, new[] { -1, 0 })]
    [InlineData(1, 4, new[] { 1, 3 })]
    [InlineData(2, 3, new int[0])]
    [InlineData(4, 9, new int[0])]
    [InlineData(-9, 9, new[] { -1, 0, 1, 3 })]
    public void Within_GivesTheHalvesThatAStretchTouches(int from, int to, int[] expected)
    {
        YearRows rows = Rows(["a"], [.. Held.Select(half => (PartTrace.StartOf(half) + Second, One))]);
        PartTrace trace = PartTracer.Of(rows);
        byte[] entries = trace.Within(PartTrace.StartOf(from), PartTrace.StartOf(to)).ToArray();
        Assert.Equal(expected, entries.Chunk(PartTrace.EntryBytes).Select(e => PartTrace.HalfIn(e)));
        Assert.All(entries.Chunk(PartTrace.EntryBytes), e => Assert.Equal(1, PartTrace.ValuesIn(e)));
    }

    [Fact]
    public void Of_AnyValueStampOrName_ChangesItsHalfAlone()
    {
        (long, double[])[] rows = [.. Enumerable.Range(0, 9).Select(i => (i * Day, new[] { i, 2.0 }))];
        byte[][] before = Halves(["a", "b"], rows);
        for (int i = 0; i < rows.Length; i++)
        {
            foreach ((long, double[]) other in ((long, double[])[])[(rows[i].Item1 + 1, rows[i].Item2), (rows[i].Item1, [rows[i].Item2[0], 3]), (rows[i].Item1, [double.NaN, 2])])
            {
                byte[][] after = Halves(["a", "b"], [.. rows.Select((row, at) => at == i ? other : row)]);
                int half = PartTrace.HalfOf(rows[i].Item1) - PartTrace.HalfOf(0);
                Assert.All(Enumerable.Range(0, before.Length), at => Assert.Equal(at != half, before[at].AsSpan().SequenceEqual(after[at])));
            }
        }

        Assert.All(Halves(["a", "c"], rows).Zip(before), pair => Assert.NotEqual(pair.First, pair.Second));
    }

    /// <summary>Missing values have many forms in memory, and one in the part.</summary>
    [Fact]
    public void Of_AnyMissingValue_IsTheSame()
        => Assert.Equal(Halves(["a"], [(0, [double.NaN])]), Halves(["a"], [(0, [BitConverter.Int64BitsToDouble(unchecked((long)0xfff8_0000_0000_1234))])]));

    [Fact]
    public void Add_HoweverRowsAreCut_GivesOneTrace()
    {
        (long, double[])[] rows = [.. Enumerable.Range(0, 200).Select(i => (i * 3600 * Second, new[] { Math.Sin(i) }))];
        PartTrace whole = PartTracer.Of(Rows(["a"], rows));
        using PartTracer tracer = PartTracer.OfReadings(["a"]);
        foreach ((long, double[])[] block in rows.Chunk(7))
        {
            tracer.Add(Rows(["a"], block));
        }

        PartTrace cut = tracer.Finish();
        Assert.Equal(whole.Halves, cut.Halves);
        Assert.Equal(3600 * Second, cut.StepMicros);
        Assert.Equal(whole.StepMicros, cut.StepMicros);
    }

    /// <summary>Three of four distances tell the step beyond doubt; fewer do not.</summary>
    [Theory]
    [InlineData(new[] { 0, 5, 10, 15, 17 }, 5L)]
    [InlineData(new[] { 0, 5, 10, 12, 14 }, null)]
    [InlineData(new[] { 0 }, null)]
    public void StepMicros_IsToldWhereItIsBeyondDoubt(int[] seconds, long? step)
        => Assert.Equal(step * Second, PartTracer.Of(Rows(["a"], [.. seconds.Select(s => (s * Second, One))])).StepMicros);

    private static byte[][] Halves(string[] names, (long, double[])[] rows) => [.. PartTracer.Of(Rows(names, rows)).Halves.Chunk(PartTrace.EntryBytes)];

    private static YearRows Rows(string[] names, (long Utc, double[] Values)[] rows)
    {
        YearRows all = new(names);
        foreach ((long utc, double[] values) in rows)
        {
            all.Append(utc, 0, 1, values);
        }

        return all;
    }
}
