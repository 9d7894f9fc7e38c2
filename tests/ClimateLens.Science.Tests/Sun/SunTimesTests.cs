using ClimateLens.Science.Sun;
using CsCheck;

namespace ClimateLens.Science.Tests.Sun;

public class SunTimesTests
{
    private static readonly Gen<(int Day, double Lat, double Lon)> Places =
        Gen.Select(Gen.Int[0, 365 * 60], Gen.Double[-65, 65], Gen.Double[-180, 180]);

    [Fact]
    public void Of_BelowThePolarCircles_RisesBeforeNoonAndSetsAfter() => Places.Sample((day, lat, lon) =>
    {
        SunDay sun = On(day, lat, lon, out _);
        return sun.Case == SunCase.RisesAndSets && sun.SunriseUtcMinutes < sun.SolarNoonUtcMinutes
            && sun.SunsetUtcMinutes > sun.SolarNoonUtcMinutes;
    });

    [Fact]
    public void Of_RiseAndSet_AreWhereTheElevationPassesTheHorizon() => Places.Sample((day, lat, lon) =>
    {
        SunDay sun = On(day, lat, lon, out double midnight);
        double rise = SolarPosition.ElevationDeg(midnight + (60 * sun.SunriseUtcMinutes!.Value), lat, lon);
        double set = SolarPosition.ElevationDeg(midnight + (60 * sun.SunsetUtcMinutes!.Value), lat, lon);
        return Math.Abs(rise - SunTimes.HorizonDeg) < 1e-4 && Math.Abs(set - SunTimes.HorizonDeg) < 1e-4;
    });

    [Fact]
    public void Of_Noon_IsLocalSolarNoonOfTheDate() => Places.Sample((day, lat, lon) =>
        // The equation of time never exceeds 17 minutes.
        Math.Abs(On(day, lat, lon, out _).SolarNoonUtcMinutes - (720 - (4 * lon))) < 17);

    [Fact]
    public void Of_Noon_HasTheSunOnTheMeridian() => Places.Where((_, lat, _) => Math.Abs(lat) > 25).Sample((day, lat, lon) =>
    {
        SunDay sun = On(day, lat, lon, out double midnight);
        double azimuth = SolarPosition.AzimuthDeg(midnight + (60 * sun.SolarNoonUtcMinutes), lat, lon);
        return lat > 0 ? Math.Abs(azimuth - 180) < 0.01 : azimuth is < 0.01 or > 359.99;
    });

    [Theory]
    [InlineData(6, 21, 70, SunCase.PolarDay)]
    [InlineData(12, 21, 70, SunCase.PolarNight)]
    [InlineData(6, 21, -70, SunCase.PolarNight)]
    [InlineData(12, 21, -70, SunCase.PolarDay)]
    [InlineData(6, 1, 90, SunCase.PolarDay)]
    [InlineData(12, 1, 90, SunCase.PolarNight)]
    [InlineData(6, 1, -90, SunCase.PolarNight)]
    public void Of_BeyondThePolarCircles_NamesTheCase(int month, int day, double latitude, SunCase expected)
    {
        SunDay sun = SunTimes.Of(2025, month, day, latitude, 19);
        Assert.Equal(new SunDay(null, null, sun.SolarNoonUtcMinutes, expected), sun);
    }

    [Fact]
    public void Of_FirstDayOfThePolarDay_RisesAndDoesNotSet()
    {
        SunDay sun = SunTimes.Of(2025, 5, 17, 69.65, 18.9);
        Assert.Equal(SunCase.RisesAndSets, sun.Case);
        Assert.NotNull(sun.SunriseUtcMinutes);
        Assert.Null(sun.SunsetUtcMinutes);
    }

    [Fact]
    public void Of_FarEast_GivesMinutesBeforeAndAfterTheUtcDate()
    {
        SunDay east = SunTimes.Of(2025, 10, 15, -37, 175), west = SunTimes.Of(2025, 10, 15, 21, -158);
        Assert.True(east.SunriseUtcMinutes < 0);
        Assert.True(west.SunsetUtcMinutes > 1440);
    }

    [Fact]
    public void Of_Equinox_LastsTwelveHoursPlusRefractionEverywhere()
    {
        // Half-diameter and refraction lift the sun by 0.833° at both ends: 2·4·0.833/cos(latitude) minutes over twelve hours.
        foreach (double latitude in new[] { 0.0, 30, -30, 53 })
        {
            SunDay sun = SunTimes.Of(2025, 3, 20, latitude, 0);
            double expected = 720 + (8 * 0.833 / Math.Cos(latitude * Math.PI / 180));
            Assert.InRange(sun.SunsetUtcMinutes!.Value - sun.SunriseUtcMinutes!.Value, expected - 1.5, expected + 1.5);
        }
    }

    [Theory]
    [InlineData(2025, 2, 29, 50, 0)]
    [InlineData(1899, 1, 1, 50, 0)]
    [InlineData(2025, 1, 1, 91, 0)]
    [InlineData(2025, 1, 1, 50, 181)]
    [InlineData(2025, 1, 1, double.NaN, 0)]
    public void Of_ImpossibleDateOrPlace_IsRefused(int year, int month, int day, double latitude, double longitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SunTimes.Of(year, month, day, latitude, longitude));

    private static SunDay On(int dayAfter1990, double latitude, double longitude, out double midnightUnixSeconds)
    {
        DateOnly date = new DateOnly(1990, 1, 1).AddDays(dayAfter1990);
        midnightUnixSeconds = (date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc) - DateTime.UnixEpoch).TotalSeconds;
        return SunTimes.Of(date.Year, date.Month, date.Day, latitude, longitude);
    }
}
