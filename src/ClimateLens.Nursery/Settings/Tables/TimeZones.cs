using System.Text.RegularExpressions;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>Time zones by name, from the zone data that come with NodaTime.</summary>
internal static partial class TimeZones
{
    private const double DegreesPerHour = 15;

    /// <summary>
    /// Zones lie within about three hours of the sun's time of their longitude (the widest, in the west of China,
    /// about three and a half); a forgotten minus sign is beyond. [h]
    /// </summary>
    private const double MostHoursFromSun = 4;

    private static readonly Instant AnyTime = Instant.FromUtc(2025, 1, 1, 0, 0);

    /// <summary>The nursery's own zone; null when left out or unknown.</summary>
    public static DateTimeZone? OfPlace(TableReader nursery)
    {
        if (nursery.Text("timeZone", "\"Europe/London\"") is not { } name)
        {
            return null;
        }

        if (!DateTimeZoneProviders.Tzdb.Ids.Contains(name))
        {
            Unknown(nursery, name, "the zone of a place, like \"Europe/London\"", "take the zone of a place near by from the IANA list; only an export's clock may have an offset.", null);
            return null;
        }

        if (!name.Contains('/', StringComparison.Ordinal) && name is not ("UTC" or "GB"))
        {
            nursery.Faults.Warning(FaultCodes.TimeZone, nursery.PlaceOf("timeZone"), $"timeZone = {Excerpt.Quoted(name)} may know no summer time", "the zone of a place", "write for example Europe/London or America/New_York.");
        }

        return DateTimeZoneProviders.Tzdb[name];
    }

    /// <summary>The zone of an export's stamps: a place, UTC, or a fixed offset.</summary>
    public static DateTimeZone? OfStamps(TableReader time, DateTimeZone nurseryZone)
    {
        if (time.Text("timeZone") is not { } name)
        {
            return time.Has("timeZone") ? null : nurseryZone;
        }

        if (DateTimeZoneProviders.Tzdb.Ids.Contains(name))
        {
            WarnOfAbbreviation(time, name);
            return DateTimeZoneProviders.Tzdb[name];
        }

        if (OffsetOf(name) is Offset offset)
        {
            return DateTimeZone.ForOffset(offset);
        }

        string? meant = MeantOffset().Match(name) is { Success: true } match ? $"{match.Groups[1].Value}{match.Groups[2].Value.PadLeft(2, '0')}:{match.Groups[3].Value.PadRight(2, '0')}" : null;
        Unknown(time, name, "the zone of a place like \"Europe/London\", \"UTC\", or an offset like \"+01:00\"", "take a name of the IANA list, or an offset of at most 18 hours.", meant is not null && OffsetOf(meant) is not null ? meant : null);
        return null;
    }

    /// <summary>Warns when a longitude lies on the other side of the world than its zone.</summary>
    public static void CompareWithLongitude(TableReader nursery, DateTimeZone zone, double longitudeDeg)
    {
        double zoneHours = zone.GetZoneInterval(AnyTime).StandardOffset.Seconds / 3600.0;
        double apart = Math.Abs((longitudeDeg / DegreesPerHour) - zoneHours);
        if (Math.Min(apart, 24 - apart) > MostHoursFromSun)
        {
            string mend = Math.Abs((-longitudeDeg / DegreesPerHour) - zoneHours) <= MostHoursFromSun
                ? $"west of Greenwich is negative: longitude = {NumberKeys.Show(-longitudeDeg)}"
                : "look at both again; sunrise and sunset depend on them.";
            nursery.Faults.Warning(FaultCodes.Place, nursery.PlaceOf("longitude"), $"longitude = {NumberKeys.Show(longitudeDeg)} is far from {zone.Id}", "", mend);
        }
    }

    /// <summary>CET means the winter's offset to people and a zone with summer time to the IANA list; EST is the other way round.</summary>
    private static void WarnOfAbbreviation(TableReader time, string name)
    {
        if (name.Length is < 3 or > 4 || name is "UTC" or "UCT" or "Zulu" || name.Contains('/', StringComparison.Ordinal) || !name.All(char.IsAsciiLetterUpper))
        {
            return;
        }

        DateTimeZone zone = DateTimeZoneProviders.Tzdb[name];
        Offset winter = zone.GetUtcOffset(AnyTime);
        bool changes = zone.GetUtcOffset(AnyTime + Duration.FromDays(182)) != winter;
        string taken = changes ? "a clock that changes to summer time" : "a clock that never changes";
        string mend = $"if the clock is never changed, write timeZone = \"{Written(winter)}\"; else the zone of the place, like Europe/London.";
        time.Faults.Warning(FaultCodes.TimeZone, time.PlaceOf("timeZone"), $"timeZone = {Excerpt.Quoted(name)} is taken for {taken}", "the zone of a place, or an offset", mend);
    }

    private static Offset? OffsetOf(string name)
        => name.Length > 0 && name[0] is '+' or '-' && OffsetPattern.GeneralInvariant.Parse(name) is { Success: true } offset ? offset.Value : null;

    private static string Written(Offset offset) => OffsetPattern.CreateWithInvariantCulture("+HH:mm").Format(offset);

    private static void Unknown(TableReader table, string name, string expected, string otherwise, string? meant)
        => table.Faults.Error(FaultCodes.TimeZone, table.PlaceOf("timeZone"), $"timeZone = {Excerpt.Quoted(name)} is not known", expected, meant is not null ? $"did you mean \"{meant}\"?" : NearestName.Mend(name, DateTimeZoneProviders.Tzdb.Ids, otherwise));

    /// <summary>Offsets as people write them: +1, +0100, UTC+1, GMT-3:30.</summary>
    [GeneratedRegex(@"^(?:UTC|GMT)?\s*([+-])(\d{1,2}):?(\d{2})?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex MeantOffset();
}
