using System.Globalization;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>Years of stamps that name none, from the order of the rows alone; the expected years are by hand.</summary>
public sealed class StampYearRollTests
{
    [Theory]
    [InlineData("12-30 12-31 01-01 01-02", "2024 2024 2025 2025")]
    [InlineData("01-02 01-01 12-31 12-30", "2025 2025 2024 2024")] // newest first
    [InlineData("? 12-31 ? 01-01 ?", "0 2024 0 2025 0")]
    [InlineData("? ?", "0 0")]
    [InlineData("06-01", "2024")]
    [InlineData("02-27 02-28 03-01 01-30 01-31", "2024 2024 2024 2024 2024")] // 31 days back: out of order
    [InlineData("02-27 02-28 03-01 01-29 01-29", "2024 2024 2024 2025 2025")] // 32 days back: another year
    [InlineData("12-30 12-31 01-01 12-31 01-01 01-02", "2024 2024 2025 2024 2025 2025")] // a late row of the old year
    [InlineData("12-31 01-01 01-02 12-03 01-03 01-04", "2024 2025 2025 2024 2025 2025")] // 336 days on: of the old year
    [InlineData("01-01 01-02 12-30 01-03 01-04", "2024 2024 2024 2025 2025")] // nothing is older than the oldest year
    [InlineData("06-01 06-02 01-05", "2024 2024 2025")] // a far date at the end
    [InlineData("06-01 06-02 01-05 06-03 06-04", "2024 2024 2024 2024 2024")] // the same date alone: torn
    [InlineData("06-01 06-02 01-05 01-06 06-03", "2024 2024 2025 2025 2025")] // two of them: a gap
    public void YearsOf_MovesOnWhereTheDateFallsBackByMoreThanAMonth(string dates, string years)
    {
        long[] places = [.. dates.Split(' ').Select(PlaceOf)];
        Assert.Equal(years.Split(' ').Select(y => int.Parse(y, CultureInfo.InvariantCulture)), YearRoll.YearsOf(places, 2024));
    }

    private static long PlaceOf(string date) => date == "?" ? YearRoll.Unread
        : (DateTime.ParseExact($"2000-{date}", "yyyy-MM-dd", CultureInfo.InvariantCulture) - DateTime.UnixEpoch).Ticks / 10;
}
