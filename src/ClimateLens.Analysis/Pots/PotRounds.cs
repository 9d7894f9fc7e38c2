using System.Collections.Immutable;
using ClimateLens.Nursery.Languages;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Which rounds were walked: by round, by day and by person.</summary>
/// <remarks><b>Rule:</b> a round of a day was walked where at least one check lies within its times. Three rounds a day, weekends too, are common practice without a published source.</remarks>
internal static class PotRounds
{
    /// <summary>Coverage by round, weekends apart.</summary>
    public static ImmutableArray<PotRoundReport> ByRound(PotData data)
    {
        PotRules rules = data.House.Input.House.Pots;
        LocalDate[] days = Days(data);
        return [.. rules.Rounds.Select((round, place) => Round(data, round, place, rules, days))];
    }

    /// <summary>Coverage by day.</summary>
    public static ImmutableArray<PotDayReport> ByDay(PotData data)
    {
        PotRules rules = data.House.Input.House.Pots;
        return
        [
            .. Days(data).Select(day => new PotDayReport(
                day,
                IsWeekend(day),
                rules.DueOn(day),
                rules.Rounds.Count(round => Walked(data, round, day)),
                data.Own.Count(c => data.DayOf(c.At) == day))),
        ];
    }

    /// <summary>Checks and days by person, most checks first.</summary>
    public static ImmutableArray<PotPerson> ByPerson(PotData data) =>
    [
        .. data.Own.GroupBy(c => c.Grader)
            .Select(person => new PotPerson(person.Key, person.Count(), person.Select(c => data.DayOf(c.At)).Distinct().Count()))
            .OrderByDescending(p => p.Checks).ThenBy(p => p.Grader, StringComparer.Ordinal),
    ];

    private static PotRoundReport Round(PotData data, PotRound round, int place, PotRules rules, LocalDate[] days)
    {
        LocalDate[] due = [.. days.Where(day => place < rules.DueOn(day))];
        return new(
            Phrase.Of(round.Name),
            due.Count(day => !IsWeekend(day)),
            due.Count(day => !IsWeekend(day) && Walked(data, round, day)),
            due.Count(IsWeekend),
            due.Count(day => IsWeekend(day) && Walked(data, round, day)));
    }

    private static bool Walked(PotData data, PotRound round, LocalDate day)
        => data.Own.Any(c => c.At.InZone(data.Zone) is var at && at.Date == day && round.Holds(at.TimeOfDay));

    private static LocalDate[] Days(PotData data)
    {
        LocalDate first = data.DayOf(data.House.Input.Period.Start);
        int count = Period.DaysBetween(first, data.DayOf(data.House.Input.Period.End - Duration.Epsilon)) + 1;
        return [.. Enumerable.Range(0, count).Select(first.PlusDays)];
    }

    private static bool IsWeekend(LocalDate day) => day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday;
}
