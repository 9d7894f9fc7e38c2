using ClimateLens.Nursery.Time;
using ClimateLens.Science.Sun;
using NodaTime;

namespace ClimateLens.Analysis.Time;

/// <summary>
/// Sunrise and sunset of every local day around a stretch of time, at one place.
/// <see cref="SunTimes"/> gives the events of a UTC date; here they are filed under the local date of their solar noon,
/// which differs from it close to the date line.
/// </summary>
public sealed class SunCalendar
{
    /// <summary>A little more than half a day: solar noons lie up to 24 h 0.5 min apart, and a polar day has no night between.</summary>
    private static readonly Duration HalfPolarDay = Duration.FromMinutes((12 * 60) + 1);

    private readonly Dictionary<LocalDate, LocalSun> _days = [];
    private readonly (Instant From, Instant To)[] _daylight;
    private readonly List<Instant> _sunrises = [];

    /// <summary>The sun between two instants, with two days to spare at either end.</summary>
    public SunCalendar(Instant from, Instant to, DateTimeZone zone, double latitudeDeg, double longitudeDeg)
    {
        Zone = zone;
        List<(Instant, Instant)> daylight = [];
        LocalDate last = to.InUtc().Date.PlusDays(2);
        for (LocalDate date = from.InUtc().Date.PlusDays(-2); date <= last; date = date.PlusDays(1))
        {
            SunDay day = SunTimes.Of(date.Year, date.Month, date.Day, latitudeDeg, longitudeDeg);
            Instant At(double minutes) => date.AtMidnight().InUtc().ToInstant() + Duration.FromSeconds(Math.Round(minutes * 60));
            Instant noon = At(day.SolarNoonUtcMinutes);
            Instant? sunrise = day.SunriseUtcMinutes is double rise ? At(rise) : null;
            Instant? sunset = day.SunsetUtcMinutes is double set ? At(set) : null;
            _days[noon.InZone(zone).Date] = new LocalSun(sunrise, sunset);
            _sunrises.AddRange(sunrise is Instant up ? [up] : []);
            if (day.Case != SunCase.PolarNight)
            {
                daylight.Add((sunrise ?? noon - HalfPolarDay, sunset ?? noon + HalfPolarDay));
            }
        }

        _daylight = [.. daylight];
    }

    /// <summary>The nursery's zone.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>Sunrise and sunset of a local date; both null when the sun stays up or down, or the date lies outside.</summary>
    public LocalSun Of(LocalDate date) => _days.TryGetValue(date, out LocalSun sun) ? sun : default;

    /// <summary>Whether the sun is down: before sunrise or from sunset on.</summary>
    public bool IsNight(Instant instant)
    {
        int low = 0, high = _daylight.Length - 1;
        while (low <= high)
        {
            int middle = (low + high) / 2;
            if (instant < _daylight[middle].From)
            {
                high = middle - 1;
            }
            else if (instant >= _daylight[middle].To)
            {
                low = middle + 1;
            }
            else
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>1 for each step in the middle of which the sun is down, else 0.</summary>
    public double[] Nights(TimeAxis axis) => [.. Enumerable.Range(0, axis.Count).Select(i => IsNight(axis.StartOf(i) + (axis.Step / 2)) ? 1.0 : 0)];

    /// <summary>The first sunrise after an instant, or null within the days held.</summary>
    public Instant? NextSunrise(Instant instant)
    {
        foreach (Instant sunrise in _sunrises)
        {
            if (sunrise > instant)
            {
                return sunrise;
            }
        }

        return null;
    }
}

/// <summary>Sunrise and sunset of one local date, to the second.</summary>
/// <param name="Sunrise">Upper limb on the horizon in the morning, or null.</param>
/// <param name="Sunset">Upper limb on the horizon in the evening, or null.</param>
public readonly record struct LocalSun(Instant? Sunrise, Instant? Sunset);
