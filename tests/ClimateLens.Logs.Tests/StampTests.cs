using System.Globalization;
using System.Text;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Time;
using CsCheck;
using NodaTime;

namespace ClimateLens.Logs.Tests;

public sealed class StampTests
{
    [Theory]
    [InlineData("iso", "2025-10-13T14:05", "2025-10-13T14:05:00")]
    [InlineData("iso", "2025-10-13 14:05:09.25", "2025-10-13T14:05:09.25")]
    [InlineData("iso", "2025-10-13", "2025-10-13T00:00:00")]
    [InlineData("iso", "2025-10-13T24:00", "2025-10-14T00:00:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05", "2025-10-13T14:05:00")]
    [InlineData("d/M/yyyy H:mm", "1/1/2008 0:30", "2008-01-01T00:30:00")]
    [InlineData("yyyyMMddHHmmss", "20230601063000", "2023-06-01T06:30:00")]
    [InlineData("MM/dd/yy hh:mm a", "02/29/24 12:05 am", "2024-02-29T00:05:00")]
    [InlineData("M/d/yyyy h:mm:ss a", "7/4/2025 1:02:03 PM", "2025-07-04T13:02:03")]
    [InlineData("dd.MM.yyyy 'um' HH:mm", "13.10.2025 um 14:05", "2025-10-13T14:05:00")]
    public void TryRead_FittingText_IsRead(string pattern, string text, string expected)
    {
        LocalStamp stamp = Read(pattern, text)!.Value;
        Assert.Equal(DateTime.Parse(expected, CultureInfo.InvariantCulture), DateTime.UnixEpoch.AddTicks(stamp.LocalMicros * 10));
        Assert.Null(stamp.OffsetSeconds);
    }

    [Theory]
    [InlineData("2023-05-31T10:30:00Z", 0)]
    [InlineData("2023-05-31T10:30+02:00", 7200)]
    [InlineData("2023-05-31T10:30-0330", -12600)]
    [InlineData("2023-05-31T10:30+01", 3600)]
    public void TryRead_IsoWithOffset_KeepsIt(string text, int seconds) => Assert.Equal(seconds, Read("iso", text)!.Value.OffsetSeconds);

    [Theory]
    [InlineData("iso", "2025-02-29T00:00")]
    [InlineData("iso", "2025-10-13T25:00")]
    [InlineData("iso", "2025-10-13T24:01")]
    [InlineData("iso", "2025-10-13T10:60")]
    [InlineData("iso", "13-10-2025 10:00")]
    [InlineData("iso", "2025-10-13T10:00 x")]
    [InlineData("iso", "0001-01-01T00:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-13-2025 14:05")]
    [InlineData("dd-MM-yyyy HH:mm", "3-10-2025 14:05")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025")]
    [InlineData("hh:mm a dd-MM-yyyy", "13:05 pm 13-10-2025")]
    [InlineData("iso", "")]
    public void TryRead_OtherText_IsRefused(string pattern, string text) => Assert.Null(Read(pattern, text));

    [Fact]
    public void TryRead_AnyMinute_AgreesWithNodaTime()
    {
        string[] patterns = ["dd-MM-yyyy HH:mm:ss", "M/d/yyyy h:mm:ss a", "yyyyMMdd'T'HHmmss", "d.M.yy H:mm:ss"];
        Gen.Select(Gen.Int[0, patterns.Length - 1], Gen.DateTime[new DateTime(1970, 1, 1), new DateTime(2069, 12, 31)]).Sample((choice, any) =>
        {
            var when = new DateTime(any.Year, any.Month, any.Day, any.Hour, any.Minute, any.Second, DateTimeKind.Utc);
            string text = StampPattern.ToParser(patterns[choice]).Format(LocalDateTime.FromDateTime(when));
            return Read(patterns[choice], text)?.LocalMicros == (when - DateTime.UnixEpoch).Ticks / 10;
        });
    }

    [Fact]
    public void Map_EveryQuarterHourOfTwoYears_AgreesWithNodaTime()
    {
        foreach (string id in new[] { "Europe/Copenhagen", "America/New_York", "Australia/Lord_Howe", "Asia/Kathmandu", "Africa/Casablanca" })
        {
            DateTimeZone zone = DateTimeZoneProviders.Tzdb[id];
            var clock = new ZoneClock(zone);
            for (var local = new LocalDateTime(2023, 12, 1, 0, 0); local.Year < 2026; local = local.PlusMinutes(15))
            {
                long micros = (local.ToDateTimeUnspecified() - DateTime.UnixEpoch).Ticks / 10;
                LocalMeaning meaning = clock.Map(micros, out long early, out long late);
                var mapping = zone.MapLocal(local);
                Assert.Equal(mapping.Count, meaning switch { LocalMeaning.Skipped => 0, LocalMeaning.Once => 1, _ => 2 });
                if (mapping.Count > 0)
                {
                    Assert.Equal(mapping.First().ToInstant().ToUnixTimeTicks() / 10, early);
                    Assert.Equal(mapping.Last().ToInstant().ToUnixTimeTicks() / 10, late);
                }
            }
        }
    }

    private static LocalStamp? Read(string pattern, string text)
        => StampParser.TryCompile(pattern)!.TryRead(Encoding.UTF8.GetBytes(text), out LocalStamp stamp) ? stamp : null;
}
