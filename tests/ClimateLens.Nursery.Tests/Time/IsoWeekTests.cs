using ClimateLens.Nursery.Time;
using CsCheck;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Time;

public class IsoWeekTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    [Theory] // ISO 8601 examples of week years that part from the calendar year
    [InlineData(2005, 1, 1, "2004-W53")]
    [InlineData(2005, 1, 2, "2004-W53")]
    [InlineData(2005, 12, 31, "2005-W52")]
    [InlineData(2007, 1, 1, "2007-W01")]
    [InlineData(2008, 12, 28, "2008-W52")]
    [InlineData(2008, 12, 29, "2009-W01")]
    [InlineData(2010, 1, 3, "2009-W53")]
    [InlineData(2019, 12, 30, "2020-W01")]
    [InlineData(2026, 12, 31, "2026-W53")]
    [InlineData(2027, 1, 3, "2026-W53")]
    public void Week_OfADateAtTheYearsEdge_IsThatOfIso8601(int year, int month, int day, string expected)
        => Assert.Equal(expected, IsoWeek.Of(new LocalDate(year, month, day)).ToString());

    [Fact]
    public void Weeks_Of400Years_Have71LongYears()
        // ISO 8601 over the Gregorian cycle of 400 years (20,871 weeks): 71 years have 53 weeks.
        => Assert.Equal(71, Enumerable.Range(2000, 400).Count(year => IsoWeek.TryParse($"{year}-W53", out _)));

    [Fact]
    public void Week_OfAnyDate_HoldsItAndAgreesWithTheFrameworksCalendar()
        => Gen.Int[0, 80_000].Sample(days =>
        {
            DateOnly date = new DateOnly(1990, 1, 1).AddDays(days);
            IsoWeek week = IsoWeek.Of(LocalDate.FromDateOnly(date));
            DateTime time = date.ToDateTime(TimeOnly.MinValue);
            return week.Number == System.Globalization.ISOWeek.GetWeekOfYear(time)
                && week.Year == System.Globalization.ISOWeek.GetYear(time)
                && week.Monday.DayOfWeek == IsoDayOfWeek.Monday
                && Period.DaysBetween(week.Monday, LocalDate.FromDateOnly(date)) is >= 0 and < 7;
        });

    [Fact]
    public void Week_Written_ReadsBack()
        => Gen.Int[0, 80_000].Sample(days =>
        {
            IsoWeek week = IsoWeek.Of(new LocalDate(1990, 1, 1).PlusDays(days));
            return IsoWeek.TryParse(week.ToString(), out IsoWeek read) && read == week;
        });

    [Fact]
    public void Weeks_Compared_StandInTheOrderOfTheirMondays()
        => Gen.Select(Gen.Int[0, 80_000], Gen.Int[0, 80_000]).Sample((one, two) =>
        {
            IsoWeek a = IsoWeek.Of(new LocalDate(1990, 1, 1).PlusDays(one));
            IsoWeek b = IsoWeek.Of(new LocalDate(1990, 1, 1).PlusDays(two));
            return (a < b) == (a.Monday < b.Monday) && (a > b) == (b < a) && (a <= b) == !(a > b) && (a >= b) == !(a < b);
        });

    [Theory]
    [InlineData("2025-W42", true)]
    [InlineData("2025-w42", true)]
    [InlineData("2025-W01", true)]
    [InlineData("2025-W52", true)]
    [InlineData("2026-W53", true)]
    [InlineData("2025-W53", false)]
    [InlineData("2025-W00", false)]
    [InlineData("2025-W54", false)]
    [InlineData("0000-W01", false)]
    [InlineData("9999-W01", false)]
    [InlineData("2025-42", false)]
    [InlineData("2025W42", false)]
    [InlineData("2025-W4", false)]
    [InlineData("2025-W+4", false)]
    [InlineData(" 2025-W4", false)]
    [InlineData("2025_W42", false)]
    [InlineData("２０２５-W42", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void Text_Read_IsAWeekOrNot(string? text, bool valid) => Assert.Equal(valid, IsoWeek.TryParse(text, out _));

    [Theory]
    [InlineData("0001-W01")]
    [InlineData("9998-W52")]
    public void Week_AtTheEndsOfTheCalendar_HasItsHours(string text)
    {
        Assert.True(IsoWeek.TryParse(text, out IsoWeek week));
        Assert.Equal(Duration.FromHours(168), week.In(London).Duration);
    }

    [Theory] // the clocks of the United Kingdom in 2025: forward on 30 March, back on 26 October
    [InlineData("2025-W13", 167)]
    [InlineData("2025-W43", 169)]
    [InlineData("2025-W42", 168)]
    [InlineData("2025-W44", 168)]
    public void Week_InLondon_HasTheHoursOfItsClock(string text, int hours)
    {
        Assert.True(IsoWeek.TryParse(text, out IsoWeek week));
        Assert.Equal(Duration.FromHours(hours), week.In(London).Duration);
    }

    [Fact]
    public void Week_InLondonInSummer_StartsAtLocalMidnight()
        => Assert.Equal(Instant.FromUtc(2025, 10, 12, 23, 0), new IsoWeek(2025, 42).In(London).Start);

    [Fact]
    public void Week_InWhichAMidnightIsSkipped_IsAnHourShorter()
    {
        // tz database, Africa/Cairo: on Friday 2024-04-26, 00:00 became 01:00.
        DateTimeZone cairo = DateTimeZoneProviders.Tzdb["Africa/Cairo"];
        Assert.Equal(Duration.FromHours(167), IsoWeek.Of(new LocalDate(2024, 4, 26)).In(cairo).Duration);
    }

    [Theory]
    [InlineData(0, 0, true)] // from the first to the last moment
    [InlineData(60, -60, true)] // an hour inside is still whole
    [InlineData(61, 0, false)]
    [InlineData(0, -61, false)]
    [InlineData(-5, -5, true)] // the last stamp of a five-minute week
    public void WholeWeeks_OfOneWeek_AllowAnHourAtEachEnd(int minutesAfterStart, int minutesAfterEnd, bool whole)
    {
        Interval span = new IsoWeek(2025, 42).In(London);
        Instant first = span.Start + Duration.FromMinutes(minutesAfterStart);
        Instant last = span.End + Duration.FromMinutes(minutesAfterEnd);
        Assert.Equal(whole ? ["2025-W42"] : [], IsoWeek.WholeWeeks(first, last, London).Select(w => w.ToString()));
    }

    [Fact]
    public void WholeWeeks_OverTheYearsEnd_AreConsecutive()
    {
        Instant first = Instant.FromUtc(2026, 12, 10, 12, 0);
        Instant last = Instant.FromUtc(2027, 1, 20, 12, 0);
        Assert.Equal(["2026-W51", "2026-W52", "2026-W53", "2027-W01", "2027-W02"], IsoWeek.WholeWeeks(first, last, London).Select(w => w.ToString()));
    }

    [Fact]
    public void WholeWeeks_OfLessThanAWeekOrBackwards_AreNone()
    {
        Instant first = Instant.FromUtc(2025, 10, 14, 0, 0);
        Assert.Empty(IsoWeek.WholeWeeks(first, first + Duration.FromDays(6), London));
        Assert.Empty(IsoWeek.WholeWeeks(first, first - Duration.FromDays(60), London));
    }
}
