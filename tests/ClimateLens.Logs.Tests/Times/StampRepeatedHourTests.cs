using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>The two passes of the repeated hour, told apart by the order of rows; minutes past two o'clock, the late meaning sixty minutes on.</summary>
public sealed class StampRepeatedHourTests
{
    private const long Minute = 60_000_000, Step = 10 * Minute;

    [Theory]
    [InlineData("0 20 40 0 20 40", "0 20 40 60 80 100")]
    [InlineData("0 20 40 10 30 50", "0 20 40 70 90 110")]
    [InlineData("20 20", "20 80")] // an hourly log shows the same time twice
    [InlineData("20 20 40", "? ? ?")] // a row logged twice tells nothing
    [InlineData("0 20 20 40", "? ? ? ?")]
    [InlineData("20 20 20", "? ? ?")]
    [InlineData("0 40 20 50 10", "? ? ? ? ?")] // back twice: mixed up
    [InlineData("0 20 20 0 20", "0 20 20 60 80")]
    [InlineData("30", "?")]
    public void Resolve_ByOrderAlone(string rows, string expected)
    {
        Assert.Equal(expected, Resolved(rows, newestFirst: false, null, null));
        Assert.Equal(string.Join(' ', expected.Split(' ').Reverse()), Resolved(string.Join(' ', rows.Split(' ').Reverse()), newestFirst: true, null, null));
    }

    /// <summary>One pass alone is the one whose rows follow their neighbours within a step and a half.</summary>
    [Theory]
    [InlineData("0 10 20", -10.0, null, "0 10 20")]
    [InlineData("0 10 20", -15.0, null, "0 10 20")] // a step and a half
    [InlineData("0 10 20", -15.1, null, "? ? ?")]
    [InlineData("30 40 50", null, 120.0, "90 100 110")]
    [InlineData("30 40 50", null, 125.0, "90 100 110")]
    [InlineData("30 40 50", null, 125.1, "? ? ?")]
    [InlineData("0 10 20 30 40 50", -10.0, 120.0, "? ? ? ? ? ?")] // joins both
    [InlineData("30 20 30", -10.0, null, "30 80 90")] // order tells first
    [InlineData("0 0 10", -10.0, null, "0 0 10")] // a row twice, and what stands before
    [InlineData("30 20 10", -10.0, null, "? ? ?")]
    [InlineData("10", 0.0, 95.0, "10")]
    public void Resolve_OnePass_JoinsItsNeighbours(string rows, double? before, double? after, string expected)
    {
        Assert.Equal(expected, Resolved(rows, newestFirst: false, before, after));
        Assert.Equal(string.Join(' ', expected.Split(' ').Reverse()), Resolved(string.Join(' ', rows.Split(' ').Reverse()), newestFirst: true, after, before));
    }

    /// <summary>Nobody logs faster than that; so many rows are no hour of a climate log.</summary>
    [Theory]
    [InlineData(15_000, true)]
    [InlineData(15_001, false)]
    public void Resolve_MoreRowsThanAnHourCanHave_TellsNothing(int count, bool isTold)
    {
        RepeatedHour hour = new();
        for (int i = 0; i < count; i++)
        {
            hour.Add(i, i % 7500, (i % 7500) + (60 * Minute));
        }

        long?[] resolved = new long?[count];
        hour.Resolve(resolved, newestFirst: false, 0);
        Assert.All(resolved, r => Assert.Equal(isTold, r is not null));
        Assert.Equal(isTold ? 60 * Minute : null, resolved[7500]);
    }

    [Theory]
    [InlineData("0 10 20", 2)]
    [InlineData("20 10 0", -2)]
    [InlineData("0 0", 0)]
    [InlineData("0 50 40", 0)]
    [InlineData("30", 0)]
    public void Trend_CountsRowsThatRunUpLessThoseThatRunDown(string rows, int trend) => Assert.Equal(trend, Hour(rows, null, null).Trend());

    private static RepeatedHour Hour(string rows, double? before, double? after)
    {
        RepeatedHour hour = new() { Before = (long?)(before * Minute), After = (long?)(after * Minute) };
        string[] minutes = rows.Split(' ');
        for (int i = 0; i < minutes.Length; i++)
        {
            long early = int.Parse(minutes[i], System.Globalization.CultureInfo.InvariantCulture) * Minute;
            hour.Add(i, early, early + (60 * Minute));
        }

        return hour;
    }

    /// <summary>Asked twice, as a file's direction may be decided late.</summary>
    private static string Resolved(string rows, bool newestFirst, double? before, double? after)
    {
        RepeatedHour hour = Hour(rows, before, after);
        string Ask()
        {
            long?[] resolved = new long?[rows.Split(' ').Length];
            hour.Resolve(resolved, newestFirst, Step);
            return string.Join(' ', resolved.Select(r => r is long at ? (at / Minute).ToString(System.Globalization.CultureInfo.InvariantCulture) : "?"));
        }

        string first = Ask();
        Assert.Equal(first, Ask());
        return first;
    }
}
