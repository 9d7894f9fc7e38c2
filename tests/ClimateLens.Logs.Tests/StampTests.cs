using System.Globalization;
using System.Text;
using ClimateLens.Logs.Times;
using CsCheck;
using NodaTime;
using NodaTime.Text;

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
    [InlineData("iso", "20251013T140509", "2025-10-13T14:05:09")]
    [InlineData("iso", "20251013 1405", "2025-10-13T14:05:00")]
    [InlineData("iso", "2025-286T14:05", "2025-10-13T14:05:00")]
    [InlineData("iso", "2025-10-13T14", "2025-10-13T14:00:00")]
    [InlineData("iso", "2025-10-13T24:00:00", "2025-10-14T00:00:00")]
    [InlineData("yyyy/MM/dd HH:mm", "2025/10/13 14:05", "2025-10-13T14:05:00")]
    [InlineData("yyyy-MM-dd HH:mm", "2025-10-13 24:00", "2025-10-14T00:00:00")]
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 2400", "2025-10-14T00:00:00")]
    [InlineData("yyyy-MM-dd Hmm", "2025-10-13 830", "2025-10-13T08:30:00")]
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 5", "2025-10-13T00:05:00")]
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 0", "2025-10-13T00:00:00")]
    [InlineData("yyyy-MM-dd HHmmss", "2025-10-13 83009", "2025-10-13T08:30:09")]
    [InlineData("yyyyMMddHmm", "20251013830", "2025-10-13T08:30:00")]
    [InlineData("dMMyyyy HH:mm", "3102025 08:30", "2025-10-03T08:30:00")]
    [InlineData("yyyyMMddHHmmssSSS", "20251013140509250", "2025-10-13T14:05:09.25")]
    [InlineData("yyyy D HHmm", "2025 286 1405", "2025-10-13T14:05:00")]
    [InlineData("yyyyDDDHHmm", "20240602400", "2024-03-01T00:00:00")]
    [InlineData("yyyy M d H", "2013 1 1 24", "2013-01-02T00:00:00")]
    [InlineData("dd/MM/yyyy hh:mm a", "13/10/2025 02:05 p. m.", "2025-10-13T14:05:00")]
    [InlineData("dd/MM/yyyy hh:mm a", "13/10/2025 02:05\u00A0p.\u00A0m.", "2025-10-13T14:05:00")]
    [InlineData("d/M/yyyy h:mm a", "3/10/2025 2:05\u202FPM", "2025-10-03T14:05:00")]
    [InlineData("d/M/yyyy h:mm a", "3/10/2025 2:05PM", "2025-10-03T14:05:00")]
    [InlineData("d/M/yyyy h:mm a", "3/10/2025 2:05a", "2025-10-03T02:05:00")]
    [InlineData("d/M/yyyy h:mm a", "3/10/2025 12:00 AM", "2025-10-03T00:00:00")]
    [InlineData("d/M/yyyy h:mm a", "3/10/2025 12:00 pm", "2025-10-03T12:00:00")]
    [InlineData("d/M/yyyy h:mm a", "3/10/2025 14:05 PM", "2025-10-03T14:05:00")]
    [InlineData("a h:mm d/M/yyyy", "PM 2:05 3/10/2025", "2025-10-03T14:05:00")]
    [InlineData("dd MMM yyyy HH:mm", "13 okt. 2025 14:05", "2025-10-13T14:05:00")]
    [InlineData("dd.MMM.yyyy HH:mm", "13.Okt.2025 14:05", "2025-10-13T14:05:00")]
    [InlineData("dd-MMM-yyyy HH:mm", "13-oct.-2025 14:05", "2025-10-13T14:05:00")]
    [InlineData("d MMMM yyyy HH:mm", "1 ao\u00FBt 2025 14:05", "2025-08-01T14:05:00")]
    [InlineData("d MMMM yyyy HH:mm", "1 aou\u0302t 2025 14:05", "2025-08-01T14:05:00")]
    [InlineData("EEEE d MMMM yyyy HH:mm", "MI\u00C9RCOLES 1 OCTUBRE 2025 14:05", "2025-10-01T14:05:00")]
    [InlineData("EEE d-M-yyyy H:mm", "ma. 13-10-2025 9:05", "2025-10-13T09:05:00")]
    [InlineData("excel1900", "45943.5868055556", "2025-10-13T14:05:00")]
    [InlineData("excel1900", "45943", "2025-10-13T00:00:00")]
    [InlineData("excel1900", "45943 0.003472222", "2025-10-13T00:05:00")]
    [InlineData("excel1904", "44481.5868055556", "2025-10-13T14:05:00")]
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
    [InlineData("2023-05-31T10:30:00.000Z", 0)]
    [InlineData("2023-05-31 10:30:00 +01:00", 3600)]
    [InlineData("2023-05-31 10:30:00 UTC", 0)]
    [InlineData("20230531T103000Z", 0)]
    [InlineData("2023-05-31T10:30+02:00[Europe/Amsterdam]", 7200)]
    public void TryRead_IsoWithOffset_KeepsIt(string text, int seconds) => Assert.Equal(seconds, Read("iso", text)!.Value.OffsetSeconds);

    [Theory]
    [InlineData("iso", "2025-02-29T00:00")]
    [InlineData("iso", "2025-10-13T25:00")]
    [InlineData("iso", "2025-10-13T24:01")]
    [InlineData("iso", "2025-10-13T10:60")]
    [InlineData("iso", "13-10-2025 10:00")]
    [InlineData("iso", "2025-10-13T10:00 x")]
    [InlineData("iso", "2025-10-13T10:00.5")]
    [InlineData("iso", "2025-1013")]
    [InlineData("iso", "2025-366")]
    [InlineData("yyyy D HHmm", "2025 366 0000")]
    [InlineData("yyyy D HHmm", "2025 0 0000")]
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 2401")]
    [InlineData("yyyy-MM-dd HHmm", "2025-10-13 860")]
    [InlineData("dd MMM yyyy HH:mm", "13 jui 2025 14:05")]
    [InlineData("dd MMM yyyy HH:mm", "13 xyz 2025 14:05")]
    [InlineData("EEE d-M-yyyy H:mm", "xx 13-10-2025 9:05")]
    [InlineData("excel1900", "60")]
    [InlineData("excel1900", "45943,5")]
    [InlineData("excel1900", "4.5943E4")]
    [InlineData("excel1900", "45943.5 0.5")]
    [InlineData("unixMilliseconds", "1760364300")]
    [InlineData("unixSeconds", "1760364300000")]
    [InlineData("unixSeconds", "1.7603643E9")]
    [InlineData("iso", "0001-01-01T00:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-13-2025 14:05")]
    [InlineData("dd-MM-yyyy HH:mm", "3-10-2025 14:05")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025 14:05:00")]
    [InlineData("dd-MM-yyyy HH:mm", "13-10-2025")]
    [InlineData("hh:mm a dd-MM-yyyy", "13:05 am 13-10-2025")]
    [InlineData("iso", "")]
    public void TryRead_OtherText_IsRefused(string pattern, string text) => Assert.Null(Read(pattern, text));

    [Fact]
    public void TryRead_AnyMinute_AgreesWithNodaTime()
    {
        // Our letters, and NodaTime's for the same text.
        (string Ours, string Nodas)[] patterns =
        [
            ("dd-MM-yyyy HH:mm:ss", "dd-MM-uuuu HH:mm:ss"), ("M/d/yyyy h:mm:ss a", "M/d/uuuu h:mm:ss tt"), ("yyyyMMdd'T'HHmmss", "uuuuMMdd'T'HHmmss"),
            ("d.M.yy H:mm:ss", "d.M.yy H:mm:ss"), ("EEEE, d MMMM yyyy HH:mm:ss", "dddd, d MMMM uuuu HH:mm:ss"), ("dd-MMM-yy hh:mm:ss a", "dd-MMM-yy hh:mm:ss tt"),
            ("HH:mm:ss dd/MM/yyyy", "HH:mm:ss dd/MM/uuuu"), ("yyyyMMdd Hmmss", "uuuuMMdd Hmmss"), ("iso", "uuuu-MM-dd'T'HH:mm:ss"), ("iso", "uuuuMMdd'T'HHmmss"),
        ];
        Gen.Select(Gen.Int[0, patterns.Length - 1], Gen.DateTime[new DateTime(1970, 1, 1), new DateTime(2069, 12, 31)]).Sample((choice, any) =>
        {
            var when = new DateTime(any.Year, any.Month, any.Day, any.Hour, any.Minute, any.Second, DateTimeKind.Utc);
            string text = LocalDateTimePattern.CreateWithInvariantCulture(patterns[choice].Nodas).Format(LocalDateTime.FromDateTime(when));
            return Read(patterns[choice].Ours, text)?.LocalMicros == (when - DateTime.UnixEpoch).Ticks / 10;
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
