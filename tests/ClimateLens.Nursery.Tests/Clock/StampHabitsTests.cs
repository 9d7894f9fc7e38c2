using System.Collections.Immutable;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Clock;

public sealed class StampHabitsTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    [Theory]
    [InlineData(28, true)]
    [InlineData(60, true)]
    [InlineData(2, false)] // too few days to tell
    public void Check_DayAndMonthSwapped_IsToldByTheOrderOfDays(int days, bool told)
    {
        // Rows from 2 October on, written day first and read month first: what has no such month is set aside.
        LocalDate[] read = [.. Enumerable.Range(0, days).Select(i => new LocalDate(2025, 10, 2).PlusDays(i)).Where(d => d.Day <= 12).Select(d => new LocalDate(d.Year, d.Day, d.Month)).Order()];
        ClockCheck check = Check(read.SelectMany(Hours));
        Assert.Equal(told, check.Verdict == ClockVerdict.SwappedDates);
        Assert.Equal(told, check.Mend.StartsWith("Write MM where dd stands", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_SparseButTrueDates_AreNotSwapped()
    {
        Assert.NotEqual(ClockVerdict.SwappedDates, Check(Enumerable.Range(0, 6).Select(i => new LocalDate(2025, 1 + (2 * i), 1)).SelectMany(Hours)).Verdict); // the first of every other month
        Assert.NotEqual(ClockVerdict.SwappedDates, Check(Enumerable.Range(0, 12).Select(i => new LocalDate(2025, 1, 1).PlusDays(i)).Append(new LocalDate(2025, 3, 5)).SelectMany(Hours)).Verdict);
    }

    [Fact]
    public void Check_AmAndPmLost_IsToldByTheHours()
    {
        IEnumerable<LocalDateTime> rows = Enumerable.Range(0, 5).SelectMany(d => Enumerable.Range(0, 12).Select(h => new LocalDate(2025, 6, 2).PlusDays(d).At(new LocalTime(h + 1, 0))));
        ClockCheck check = Check(rows);
        Assert.Equal(ClockVerdict.HalfDay, check.Verdict);
        Assert.Contains("hh", check.Mend, StringComparison.Ordinal);
        Assert.NotEqual(ClockVerdict.HalfDay, Check(rows.Select(t => t.PlusHours(1))).Verdict);
        Assert.NotEqual(ClockVerdict.HalfDay, Check(rows.Append(new LocalDateTime(2025, 6, 3, 22, 0))).Verdict);
    }

    private static IEnumerable<LocalDateTime> Hours(LocalDate date) => Enumerable.Range(0, 24).Select(h => date.At(new LocalTime(h, 0)));

    private static ClockCheck Check(IEnumerable<LocalDateTime> rows)
    {
        long[] utc = [.. rows.Select(t => London.AtLeniently(t).ToInstant().ToUnixTimeTicks() / 10).Distinct().Order()];
        ReadingBatch batch = new("1", "climate", StampSide.Instant, 3600, utc, ImmutableSortedDictionary<string, double[]>.Empty.Add("airTemperature", new double[utc.Length]));
        return SourceClock.Check(new SkyReadings().Nursery(), London, batch);
    }
}
