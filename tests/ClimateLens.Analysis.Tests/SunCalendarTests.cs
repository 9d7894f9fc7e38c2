using ClimateLens.Analysis.Time;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class SunCalendarTests
{
    [Fact]
    public void Of_GoldenColorado_GivesThePublishedTimes()
    {
        // Golden, Colorado, 2015-01-02: sunrise 07:21:55, sunset 16:47:43 MST (test values of pvlib-python, commit 6382338).
        SunCalendar sun = Calendar("America/Denver", new LocalDate(2015, 1, 2), 39.742476, -105.1786);
        LocalSun day = sun.Of(new LocalDate(2015, 1, 2));
        Assert.Equal(0, (day.Sunrise!.Value - Instant.FromUtc(2015, 1, 2, 14, 21, 55)).TotalMinutes, 0.5);
        Assert.Equal(0, (day.Sunset!.Value - Instant.FromUtc(2015, 1, 2, 23, 47, 43)).TotalMinutes, 0.5);
        Assert.True(sun.IsNight(day.Sunset.Value));
        Assert.False(sun.IsNight(day.Sunset.Value - Duration.FromSeconds(1)));
        Assert.False(sun.IsNight(day.Sunrise.Value));
        Assert.True(sun.IsNight(day.Sunrise.Value - Duration.FromSeconds(1)));
    }

    [Theory]
    [InlineData("Pacific/Apia", -13.8, -171.8)]
    [InlineData("Pacific/Kiritimati", 1.9, -157.5)]
    [InlineData("Pacific/Honolulu", 21.3, -157.9)]
    [InlineData("Pacific/Auckland", -36.8, 174.8)]
    [InlineData("Asia/Kolkata", 18.5, 73.9)]
    [InlineData("Europe/London", 53.2, -0.6)]
    public void Of_AnyZone_FilesSunriseAndSunsetUnderTheirLocalDate(string zone, double latitude, double longitude)
    {
        LocalDate date = new(2025, 10, 15);
        LocalSun day = Calendar(zone, date, latitude, longitude).Of(date);
        DateTimeZone tz = DateTimeZoneProviders.Tzdb[zone];
        Assert.Equal(date, day.Sunrise!.Value.InZone(tz).Date);
        Assert.Equal(date, day.Sunset!.Value.InZone(tz).Date);
    }

    [Fact]
    public void IsNight_PolarNightAndDay_HasNoSunsetAndOneAnswer()
    {
        SunCalendar winter = Calendar("Europe/Oslo", new LocalDate(2025, 12, 20), 70.7, 23.7);
        Assert.Null(winter.Of(new LocalDate(2025, 12, 20)).Sunset);
        Assert.True(winter.IsNight(Instant.FromUtc(2025, 12, 20, 11, 0)));
        Assert.Null(winter.NextSunrise(Instant.FromUtc(2025, 12, 20, 11, 0)));
        SunCalendar summer = Calendar("Europe/Oslo", new LocalDate(2025, 6, 20), 70.7, 23.7);
        Assert.Null(summer.Of(new LocalDate(2025, 6, 20)).Sunset);
        Assert.False(summer.IsNight(Instant.FromUtc(2025, 6, 20, 23, 30)));
    }

    [Fact]
    public void PolarDay_BetweenTwoSolarNoons_HasNeitherNightNorSunrise()
    {
        // In late June solar noon comes 13 s later each day: half days of 12 h would leave a gap at midnight.
        LocalDate date = new(2025, 6, 20);
        SunCalendar summer = Calendar("Europe/Oslo", date, 70.7, 23.7);
        Instant start = Instant.FromUtc(2025, 6, 20, 12, 0);
        Assert.DoesNotContain(Enumerable.Range(0, 86400), second => summer.IsNight(start + Duration.FromSeconds(second)));
        Assert.Null(summer.NextSunrise(start));
    }

    private static SunCalendar Calendar(string zone, LocalDate date, double latitude, double longitude)
    {
        DateTimeZone tz = DateTimeZoneProviders.Tzdb[zone];
        Instant start = tz.AtStartOfDay(date).ToInstant();
        return new SunCalendar(start, start + Duration.FromDays(1), tz, latitude, longitude);
    }
}
