using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Clock;
using ClimateLens.Science.Sun;
using NodaTime;

namespace ClimateLens.Nursery.Clock;

/// <summary>Light that lasts too long or too short for its date and place: says what would make it fit.</summary>
internal static class DayLengthWords
{
    /// <summary>Light fits a day when it is from this much shorter to that much longer than from sunrise to sunset. [h]</summary>
    private const double FitsShorter = -2, FitsLonger = 0.75;

    /// <summary>The finding.</summary>
    public static ClockCheck Of(ClockPlace place, ColumnKey key, LightDays light, double litHours, double daylightHours)
    {
        double latitude = place.Nursery.LatitudeDeg;
        LocalDate[] dates = [.. light.Days.Select(d => place.DateOf(d.NoonUnixSeconds))];
        double[] lit = [.. light.Days.Select(d => d.LitHours)];
        string mend = dates.All(d => d.Day <= 12) && Fits(dates.Select(d => new LocalDate(d.Year, d.Day, d.Month)), lit, latitude, place)
            ? Phrase.Of("With day and month swapped it fits: write MM where dd stands, and dd where MM stands, in format under [export.time].")
            : Fits(dates, lit, -latitude, place) ? Phrase.Of($"Look at the dates (day, month and year in format under [export.time]); with latitude = {ClockWords.Exact(-latitude)} under [nursery] it would fit too.")
            : Phrase.Of("Look at the dates (day, month and year in format under [export.time]) and at the latitude under [nursery].");
        string sentence = Phrase.Of($"{ClockWords.Capital(ClockWords.Label(key))} lasts {ClockWords.Hours(litHours)} a day where sunrise to sunset is {ClockWords.Hours(daylightHours)} at these dates and this latitude ({ClockWords.Count(lit.Length, "day")}): the dates or the place are wrong, or lamps shine on the sensor.");
        return new ClockCheck(ClockVerdict.DayLength, key.Channel, key.Sensor, lit.Length, sentence, mend);
    }

    private static bool Fits(IEnumerable<LocalDate> dates, double[] litHours, double latitudeDeg, ClockPlace place)
    {
        double[] longer = [.. dates.Zip(litHours, (date, lit) => lit - Daylight(date, latitudeDeg, place.Nursery.LongitudeDeg)).Order()];
        return longer[longer.Length / 2] is >= FitsShorter and <= FitsLonger;
    }

    private static double Daylight(LocalDate date, double latitudeDeg, double longitudeDeg)
    {
        SunDay sun = SunTimes.Of(date.Year, date.Month, date.Day, latitudeDeg, longitudeDeg);
        return sun.Case switch
        {
            SunCase.PolarDay => 24,
            SunCase.PolarNight => 0,
            _ => ((sun.SunsetUtcMinutes ?? sun.SolarNoonUtcMinutes + 720) - (sun.SunriseUtcMinutes ?? sun.SolarNoonUtcMinutes - 720)) / 60,
        };
    }
}
