using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Advice;

/// <summary>
/// A clock that does not agree with the sun: all hours of the page stand at the wrong time of day, so it goes before all else. A clock of the whole nursery
/// (weather) moves only what is compared with it and counts for a day.
/// </summary>
internal static class ClockWrong
{
    public const string Id = "clockWrong";

    private const double WeatherHours = 24;

    public static Candidate? Of(Evidence evidence)
    {
        ClockReport[] wrong = [.. evidence.Period.Clocks.Where(c => c.ConcernsPeriod)];
        if (wrong.Length == 0)
        {
            return null;
        }

        bool own = wrong.Any(c => c.House != ReadingBatch.WholeNursery);
        return new Candidate(
            Id,
            own ? evidence.Coverage.ExpectedHours : WeatherHours,
            string.Join(" ", wrong.Select(c => Phrase.Of($"Export \"{c.Source}\": {Say.InSentence(c.Check.Sentence)}"))),
            string.Join(" ", wrong.Select(c => c.Check.Mend).Distinct(StringComparer.Ordinal)),
            own ? Phrase.Of("Until it is mended, night and day, sunset and waterings do not fit the readings of this page: its hours stand at the wrong time of day.")
                : Phrase.Of("The house's own readings are not concerned; what is compared with the weather is."),
            [.. wrong.SelectMany(Facts)]);
    }

    private static IEnumerable<string> Facts(ClockReport report)
    {
        ClockCheck check = report.Check;
        foreach (ClockSpell spell in check.Spells)
        {
            yield return Phrase.Of($"{report.Source}, {Say.Day(spell.From)} to {Say.Day(spell.To)}: the middle of the day lies {Say.Number(Math.Abs(spell.OffsetMin), 0)} ± {Say.Number(spell.ErrorMin, 0)} min {(spell.OffsetMin < 0 ? Phrase.Of("before") : Phrase.Of("after"))} its place by the sun ({Say.Count(spell.Days, "day")}).");
        }

        if (check is { LitHours: double lit, DaylightHours: double day })
        {
            yield return Phrase.Of($"{report.Source}: light lasts {Say.Number(lit)} h a day, sunrise to sunset {Say.Number(day)} h.");
        }

        if (report.File.Length > 0)
        {
            yield return Phrase.Of($"Seen over the whole of {report.File}.");
        }
    }
}
