using System.Text;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>Offsets from UTC behind a time, as ISO 8601 writes them; the seconds are hours times 3600 and minutes times 60, by hand.</summary>
public sealed class StampOffsetTests
{
    private const string Time = "2025-10-13T10:30";

    [Theory]
    [InlineData("+05:45", 20_700)] // Asia/Kathmandu
    [InlineData("+1245", 45_900)] // Pacific/Chatham
    [InlineData("-09:30", -34_200)] // Pacific/Marquesas
    [InlineData("+14", 50_400)] // Pacific/Kiritimati, the furthest of all
    [InlineData("+00:59", 3_540)]
    [InlineData("+18:00", 64_800)] // the most that is taken
    [InlineData("-18:00", -64_800)]
    [InlineData("z", 0)]
    [InlineData(" GMT", 0)]
    [InlineData("Z[UTC]", 0)]
    [InlineData("-04:00[America/New_York]", -14_400)]
    [InlineData("+02:00[]", 7_200)]
    public void TryRead_Offset_IsItsSeconds(string offset, int seconds)
    {
        Assert.True(Read(Time + offset, out LocalStamp stamp));
        Assert.Equal(seconds, stamp.OffsetSeconds);
        Assert.Equal(new DateTime(2025, 10, 13, 10, 30, 0), DateTime.UnixEpoch.AddTicks(stamp.LocalMicros * 10)); // the clock time stays as written
    }

    [Theory]
    [InlineData("+19:00")] // no zone is so far off
    [InlineData("-19:00")]
    [InlineData("+99")]
    [InlineData("+01:60")]
    [InlineData("+0160")]
    [InlineData("+18:60")]
    [InlineData("+19:60")]
    [InlineData("+")]
    [InlineData("-")]
    [InlineData("+5")]
    [InlineData("+02:")]
    [InlineData("+02:5")]
    [InlineData("+023")]
    [InlineData("+02:000")]
    [InlineData("+02:00x")]
    [InlineData("Z x")]
    [InlineData("+02:00[Europe/Amsterdam")] // cut off
    [InlineData("+02:00Europe/Amsterdam]")]
    [InlineData("+02:00[Europe/Amsterdam]x")]
    [InlineData("[Europe/Amsterdam]")] // a zone alone is no offset
    [InlineData("CET")]
    public void TryRead_NoOffset_IsRefused(string text) => Assert.False(Read(Time + text, out _));

    [Fact]
    public void TryRead_WithoutAnOffset_LeavesItToTheZone()
    {
        Assert.True(Read(Time + " ", out LocalStamp stamp));
        Assert.Null(stamp.OffsetSeconds);
    }

    private static bool Read(string text, out LocalStamp stamp) => StampParser.TryCompile("iso")!.TryRead(Encoding.UTF8.GetBytes(text), out stamp);
}
