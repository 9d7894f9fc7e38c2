using System.Globalization;
using System.Text;
using ClimateLens.Logs.Times;
using NodaTime;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>
/// The clock of Europe/London went from 02:00 summer time (+01:00) to 01:00 (+00:00) on 26 October 2025 at 01:00 UTC: 01:00 to 01:59 came twice,
/// at 00:00 and at 01:00 UTC. Rows are times of that day, with a date before them where they are of another.
/// </summary>
public sealed class StampSequenceTests
{
    private const long Minute = 60_000_000;

    /// <summary>Files of nothing but the repeated hour: their own trend tells the direction.</summary>
    [Theory]
    [InlineData("01:00 01:30 01:00 01:30", "00:00 00:30 01:00 01:30")]
    [InlineData("01:30 01:00 01:30 01:00", "01:30 01:00 00:30 00:00")] // newest first
    [InlineData("01:30 01:30", "00:30 01:30")] // nothing tells: as most files run
    [InlineData("01:00 01:20 01:40", "? ? ?")]
    public void Resolve_HourAlone_FollowsItsTrend(string rows, string utc) => Assert.Equal(utc, Resolved(rows));

    /// <summary>Nine steps of ten tell the direction, and no fewer. The rows behind the hour add no step to the first.</summary>
    [Theory]
    [InlineData("03:00 03:10 03:20 03:30 03:40 03:50 04:00 04:10 04:20 04:30 04:20 01:30 01:30", "00:30 01:30")] // 9 forward, 1 back
    [InlineData("03:00 03:10 03:20 03:30 03:40 03:50 04:00 04:10 04:20 04:10 04:00 01:30 01:30", "? ?")] // 8 forward, 2 back
    [InlineData("05:00 04:50 04:40 04:30 04:20 04:10 04:00 03:50 03:40 03:30 03:40 01:30 01:30", "01:30 00:30")] // 9 back, 1 forward
    [InlineData("05:00 04:50 04:40 04:30 04:20 04:10 04:00 03:50 03:40 03:50 04:00 01:30 01:30", "? ?")]
    [InlineData("03:00 03:00 03:00 03:10 03:10 03:10 01:30 01:30", "00:30 01:30")] // times again are no steps
    [InlineData("03:10 03:10 03:10 03:00 03:00 03:00 01:30 01:30", "01:30 00:30")]
    public void Resolve_FileThatRunsOneWay_FollowsIt(string rows, string utc) => Assert.Equal(utc, Resolved(rows));

    /// <summary>Stamps that name their offset are certain: they join the hour and tell the direction as others do.</summary>
    [Theory]
    [InlineData("00:40+01:00 00:50+01:00 01:00 01:10", "00:00 00:10")]
    [InlineData("01:00 01:10 01:20+00:00 01:30+00:00", "01:00 01:10")]
    [InlineData("01:30+00:00 01:20+00:00 01:10+00:00 01:00", "01:00")] // newest first
    public void Resolve_RowsWithOffsetsBesideTheHour_JoinIt(string rows, string utc) => Assert.Equal(utc, Resolved(rows));

    /// <summary>The step that the settings name counts, not that of the rows; records have none and join nothing.</summary>
    [Theory]
    [InlineData(null, "00:10")] // half-hourly rows: 20 minutes on
    [InlineData(30L, "00:10")]
    [InlineData(14L, "00:10")] // a step and a half
    [InlineData(13L, "?")]
    [InlineData(0L, "?")]
    public void Resolve_OnePass_JoinsWithinTheStepOfTheSettings(long? stepMinutes, string utc)
        => Assert.Equal(utc, Resolved("25T22:49 25T23:19 25T23:49 00:19 00:49 01:10", stepMinutes * Minute));

    /// <summary>The usual step is that of the last rows, however many there were before.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(513)]
    [InlineData(600)]
    [InlineData(1_500)]
    public void Resolve_FileOfManyRows_KnowsItsStep(int before)
    {
        // Each ten minutes up to 00:45 summer time, 23:45 UTC, but the oldest half two hours apart.
        string Row(int i) => new DateTime(2025, 10, 26, 0, 45, 0).AddMinutes(-10 * i - (i > 515 ? 110 * (i - 515) : 0)).ToString("yyyy-MM-dd'T'HH:mm'+01:00'", CultureInfo.InvariantCulture);
        string rows = string.Join(' ', Enumerable.Range(0, before).Reverse().Select(Row));
        Assert.Equal("00:00", Resolved($"{rows} 01:00")); // 15 minutes on: a step and a half
        Assert.Equal("?", Resolved($"{rows} 01:01"));
    }

    [Fact]
    public void Add_SkippedTime_IsNoStamp()
    {
        // The clock went from 01:00 to 02:00 on 30 March 2025.
        var sequence = new StampSequence(new ZoneClock(DateTimeZoneProviders.Tzdb["Europe/London"]), null);
        Assert.Equal(LocalMeaning.Skipped, sequence.Add(Stamp("2025-03-30T01:30"), dateOnly: false, out _));
        Assert.Equal(0, sequence.Waiting);
    }

    /// <summary>
    /// In Cuba the clock changes at midnight: on 9 March 2025 from 00:00 to 01:00 (-05:00 to -04:00), and on 2 November from 01:00 to 00:00. A date alone is
    /// the first moment of its day.
    /// </summary>
    [Theory]
    [InlineData("2025-03-08", "2025-03-08T05:00:00")]
    [InlineData("2025-03-09", "2025-03-09T05:00:00")] // 00:00 never was; 01:00 summer time
    [InlineData("2025-03-10", "2025-03-10T04:00:00")]
    [InlineData("2025-11-02", "2025-11-02T04:00:00")] // the first of two midnights
    [InlineData("2025-11-03", "2025-11-03T05:00:00")]
    public void Add_DateWhoseMidnightIsNoneOrTwo_IsTheStartOfTheDay(string date, string utc)
    {
        var sequence = new StampSequence(new ZoneClock(DateTimeZoneProviders.Tzdb["America/Havana"]), null);
        Assert.Equal(LocalMeaning.Once, sequence.Add(Stamp(date), dateOnly: true, out long micros));
        Assert.Equal(DateTime.Parse(utc, CultureInfo.InvariantCulture), DateTime.UnixEpoch.AddTicks(micros * 10));
        Assert.Equal(0, sequence.Waiting);
    }

    [Fact]
    public void Add_MidnightAsATime_WaitsForTheOrderOrIsSkipped()
    {
        var sequence = new StampSequence(new ZoneClock(DateTimeZoneProviders.Tzdb["America/Havana"]), null);
        Assert.Equal(LocalMeaning.Skipped, sequence.Add(Stamp("2025-03-09"), dateOnly: false, out _));
        Assert.Equal(LocalMeaning.Twice, sequence.Add(Stamp("2025-11-02"), dateOnly: false, out _));
        Assert.Equal(1, sequence.Waiting);
    }

    private static LocalStamp Stamp(string text) => StampParser.TryCompile("iso")!.TryRead(Encoding.UTF8.GetBytes(text), out LocalStamp stamp) ? stamp : throw new ArgumentException(text);

    /// <summary>UTC times of the waiting rows, in the order of the file.</summary>
    private static string Resolved(string rows, long? step = null)
    {
        var sequence = new StampSequence(new ZoneClock(DateTimeZoneProviders.Tzdb["Europe/London"]), step);
        foreach (string row in rows.Split(' '))
        {
            sequence.Add(Stamp(row.Length > 15 ? row : row.Contains('T', StringComparison.Ordinal) ? $"2025-10-{row}" : $"2025-10-26T{row}"), dateOnly: false, out _);
        }

        return string.Join(' ', sequence.Resolve().Select(at => at is long utc ? DateTime.UnixEpoch.AddTicks(utc * 10).ToString("HH:mm", CultureInfo.InvariantCulture) : "?"));
    }
}
