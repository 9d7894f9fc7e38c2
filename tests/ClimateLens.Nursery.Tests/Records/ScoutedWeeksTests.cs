using System.Collections.Immutable;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Records;

public sealed class ScoutedWeeksTests
{
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/London"];

    [Fact]
    public void Before_ACount_GivesItsWeekAndTheOneBefore()
        => Assert.Equal(["2025-W39", "2025-W40"], Before("2025-W42", Row(2025, 10, 1)));

    [Fact]
    public void Before_ACountInThePeriod_GivesTheWeekBeforeIt()
        => Assert.Equal(["2025-W41"], Before("2025-W42", Row(2025, 10, 15)));

    [Fact]
    public void Before_ACountInTheFirstWeekOfAYear_ReachesIntoTheOld()
        => Assert.Equal(["2025-W52", "2026-W01"], Before("2026-W03", Row(2026, 1, 2))); // 2025 has 52 weeks, and 2 January 2026 is a Friday of week 1 (ISO 8601)

    [Fact]
    public void Before_ACountByTheLocalClock_FallsIntoTheLocalWeek()
        => Assert.Equal(["2025-W39", "2025-W40"], Before("2025-W42", Row(2025, 9, 28, 23, 30))); // half past midnight on Monday in London

    [Fact]
    public void Before_ManyWeeks_GivesTheLatestHalfYear()
    {
        string[] weeks = Before("2025-W52", [.. Enumerable.Range(0, 50).Select(week => Row(new LocalDate(2025, 1, 7).PlusWeeks(week)))]);
        Assert.Equal(26, weeks.Length);
        Assert.Equal(("2025-W26", "2025-W51"), (weeks[0], weeks[^1]));
    }

    [Fact]
    public void Before_OldOrLaterCountsAndOtherRecords_GivesNone()
        => Assert.Empty(Before("2025-W42", Row(2025, 3, 1), Row(2025, 10, 25), Row(2025, 10, 1) with { Kind = RecordKind.PotChecks }));

    private static string[] Before(string week, params RecordRow[] rows)
    {
        Assert.True(IsoWeek.TryParse(week, out IsoWeek period));
        return [.. ScoutedWeeks.Before(rows, period.In(Zone), Zone).Select(w => w.ToString())];
    }

    private static RecordRow Row(LocalDate day) => Row(day.Year, day.Month, day.Day);

    private static RecordRow Row(int year, int month, int day, int hour = 9, int minute = 0)
        => new(RecordKind.Scouting, "1", "scouting", Instant.FromUtc(year, month, day, hour, minute), "scouting.csv", 2, ImmutableSortedDictionary<string, string>.Empty.Add("count", "1"));
}
