using ClimateLens.Science.Clock;
using ClimateLens.Science.Sun;
using ClimateLens.Science.Tests.CheckRows;
using CsCheck;

namespace ClimateLens.Science.Tests.Clock;

public sealed class SunNoonsTests
{
    /// <summary>The nearest noon is less than half a day off, and the equation of time at most 16.5 minutes.</summary>
    [Fact]
    public void DayOf_MomentsAroundANoon_IsItsDay() => Gen.Select(Gen.Double[-180, 180], Gen.Int[-20000, 40000], Gen.Double[-703, 703]).Sample((longitude, day, minutes) =>
    {
        SunNoons sun = new(40, longitude);
        Assert.Equal(day, sun.DayOf(sun.NoonMin(day) + minutes));
    });

    [Fact]
    public void NoonMin_PublishedNoons_AreMet()
    {
        foreach (CheckRow row in CheckRow.Of("solar_checks").Where(r => r.Quantity == "solar_noon"))
        {
            int day = DayNumber(DateOnly.ParseExact(row.Text("date"), "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            double noon = new SunNoons(row.Input("lat_deg"), row.Input("lon_deg")).NoonMin(day);
            double published = (day * 1440.0) + row.Number("expected_minutes") - (60 * row.Input("utc_offset_h"));
            Assert.True(Math.Abs(noon - published) <= row.Tolerance, $"{row}: {noon - published}");
        }
    }

    /// <summary>The almanac's years, 1900 to 2100, and a day on either side.</summary>
    [Fact]
    public void NoonMin_OutsideTheAlmanac_IsNotKnown()
    {
        SunNoons sun = new(40, 10);
        int first = DayNumber(new DateOnly(1900, 1, 1)), last = DayNumber(new DateOnly(2100, 12, 31));
        Assert.Equal([false, true, true, false], new[] { first - 1, first, last, last + 1 }.Select(day => double.IsFinite(sun.NoonMin(day))));
        Assert.Equal([false, true, true, false], new[] { first - 1, first, last, last + 1 }.Select(day => double.IsFinite(sun.DaylightHours(day))));
    }

    /// <summary>Against the minutes with the sun above the horizon within half a day of noon; on the days beside the polar day it only rises or only sets.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(53.2)]
    [InlineData(68)]
    [InlineData(-68)]
    public void DaylightHours_AnyLatitude_AreTheMinutesOfSun(double latitude)
    {
        SunNoons sun = new(latitude, 20);
        for (int day = DayNumber(new DateOnly(2025, 1, 1)); day < DayNumber(new DateOnly(2026, 1, 1)); day += 5)
        {
            Assert.Equal(Minutes(sun, day, latitude) / 60.0, sun.DaylightHours(day), 0.07); // up to two minutes at each end
        }
    }

    [Fact]
    public void DaylightHours_SunThatOnlyRisesOrOnlySets_CountsToTheEndOfTheDay()
    {
        int tried = 0;
        SunNoons sun = new(68, 20);
        for (DateOnly date = new(2025, 5, 15); date < new DateOnly(2025, 8, 1); date = date.AddDays(1))
        {
            SunDay times = SunTimes.Of(date.Year, date.Month, date.Day, 68, 20);
            if (times.SunriseUtcMinutes is null != times.SunsetUtcMinutes is null)
            {
                tried++;
                Assert.Equal(Minutes(sun, DayNumber(date), 68) / 60.0, sun.DaylightHours(DayNumber(date)), 0.07);
            }
        }

        Assert.True(tried > 0, "No such day.");
    }

    private static int Minutes(SunNoons sun, int day, double latitude) => Enumerable.Range(-720, 1440)
        .Count(m => SolarPosition.ElevationDeg((sun.NoonMin(day) + m + 0.5) * 60, latitude, 20) >= SunTimes.HorizonDeg);

    private static int DayNumber(DateOnly date) => date.DayNumber - new DateOnly(1970, 1, 1).DayNumber;
}
