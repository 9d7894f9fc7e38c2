using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Less than 80 % of the hours have data. The share is a choice of this project, no source.</summary>
internal static class TooLittleData
{
    public const string Id = "tooLittleData";

    private const double EnoughShare = 0.8;

    public static Candidate? Of(Evidence evidence)
    {
        int expected = evidence.Coverage.ExpectedHours, with = evidence.Coverage.HoursWithData;
        if (with >= EnoughShare * expected)
        {
            return null;
        }

        string missing = (evidence.Period.Temperature, evidence.Period.Humidity ?? evidence.Period.HumidityFrom) switch
        {
            (null, null) => Phrase.Of(" No air temperature and no humidity is logged for this house."),
            (null, _) => Phrase.Of(" No air temperature is logged for this house."),
            (_, null) => Phrase.Of(" No humidity is logged for this house."),
            _ => "",
        };
        return new Candidate(
            Id,
            expected - with,
            Phrase.Of($"Only {with} of {Say.Count(expected, "hour")} have both temperature and humidity; what happened in the other {expected - with} is not known.{missing}"),
            missing.Length > 0
                ? Phrase.Of("Name a column with relative humidity and one with air temperature for this house in the nursery file, or fit the sensor.")
                : Phrase.Of("See the gaps under sensors: import the exports that are missing, or have the logger or sensor looked at."),
            Phrase.Of("Hours without data are not counted as safe: they are not counted at all."),
            [.. evidence.Coverage.Gaps.Take(10).Select(g => Phrase.Of($"{Say.Time(g.Start.ToInstant(), evidence.Zone)} to {Say.Time(g.End.ToInstant(), evidence.Zone)}: {Why(g.Why)}."))]);
    }

    private static string Why(string why) => why switch
    {
        "noReadings" => Phrase.Of("no readings"),
        "missingValue" => Phrase.Of("rows without a value"),
        _ => Phrase.Of("values that failed their checks"),
    };
}
