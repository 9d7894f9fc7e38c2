using System.Globalization;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>Waterings that people or machines wrote down, one row each.</summary>
internal static class LoggedWaterings
{
    /// <summary>All waterings in the house's records, in their order.</summary>
    public static IEnumerable<WateringEvent> Of(HouseInput input)
        => input.Records.Where(r => r.Kind == RecordKind.Waterings).Select(r => Read(r, input.Nursery.Zone));

    private static WateringEvent Read(RecordRow row, DateTimeZone zone)
    {
        string source = string.Create(CultureInfo.InvariantCulture, $"{row.File}:{row.Line}");
        Instant? end = row.Text("end") is { Length: > 0 } text ? ReadEnd(text, row.At, zone) : null;
        if (end < row.At)
        {
            source += Phrase.Of(" (its end lies before its start and was not used)");
            end = null;
        }

        if (end is null && row.Number("minutes") is double minutes and >= 0 and < 24 * 60)
        {
            end = row.At + Duration.FromSeconds(minutes * 60);
        }

        string method = row.Text("method");
        WateringMethod? known = WateringMethods.TryParse(method, out WateringMethod read) ? read : null;
        if (known is null && method.Length > 0)
        {
            source += Phrase.Of($" (method \"{method}\" is not known)");
        }

        return new WateringEvent(row.At, end, known, row.Text("bench"), row.Number("litres") is double litres and >= 0 ? litres : null, source) { UnknownMethod = known is null ? method : "" };
    }

    /// <summary>
    /// An end as the store keeps it (UTC), with an offset, or as local time or time of day; the last two are taken in the
    /// nursery's zone as the first such time at or after the start.
    /// </summary>
    internal static Instant? ReadEnd(string text, Instant start, DateTimeZone zone)
    {
        if (InstantPattern.ExtendedIso.Parse(text).TryGetValue(default, out Instant instant))
        {
            return instant;
        }

        if (OffsetDateTimePattern.ExtendedIso.Parse(text).TryGetValue(default, out OffsetDateTime withOffset))
        {
            return withOffset.ToInstant();
        }

        if (LocalDateTimePattern.ExtendedIso.Parse(text).TryGetValue(default, out LocalDateTime local))
        {
            return FirstFrom(local, start, zone);
        }

        LocalTimePattern clock = LocalTimePattern.CreateWithInvariantCulture("H:mm");
        if (LocalTimePattern.ExtendedIso.Parse(text).TryGetValue(default, out LocalTime time) || clock.Parse(text).TryGetValue(default, out time))
        {
            LocalDate date = start.InZone(zone).Date;
            return FirstFrom(date + time, start, zone) is Instant same && same >= start
                ? same
                : FirstFrom(date.PlusDays(1) + time, start, zone);
        }

        return null;
    }

    private static Instant? FirstFrom(LocalDateTime local, Instant start, DateTimeZone zone)
    {
        var mapping = zone.MapLocal(local);
        return mapping.Count switch
        {
            0 => null,
            1 => mapping.Single().ToInstant(),
            _ => mapping.First().ToInstant() >= start ? mapping.First().ToInstant() : mapping.Last().ToInstant(),
        };
    }
}
