using ClimateLens.Science.Sun;

namespace ClimateLens.Science.Clock;

/// <summary>The sun's days at one place by their number, each worked out once.</summary>
/// <param name="latitudeDeg">Latitude, north positive. [°]</param>
/// <param name="longitudeDeg">Longitude, east positive. [°]</param>
internal sealed class SunNoons(double latitudeDeg, double longitudeDeg)
{
    /// <summary>Minutes of a day. [min]</summary>
    public const double DayMin = 1440;

    private const int UnixDayNumber = 719162;
    private const int FirstYear = 1900, LastYear = 2100;

    private readonly Dictionary<int, (double NoonMin, double DaylightHours)> _days = [];

    /// <summary>The day whose solar noon lies nearest to a moment.</summary>
    /// <param name="unixMin">Minutes after 1970-01-01 00:00 UTC. [min]</param>
    public int DayOf(double unixMin) => (int)Math.Floor((unixMin + (4 * longitudeDeg)) / DayMin);

    /// <summary>Solar noon of a day. [min after 1970-01-01 00:00 UTC]</summary>
    public double NoonMin(int day) => Of(day).NoonMin;

    /// <summary>Sunrise to sunset of a day; 0 in polar night, 24 in polar day. [h]</summary>
    public double DaylightHours(int day) => Of(day).DaylightHours;

    private (double NoonMin, double DaylightHours) Of(int day)
    {
        if (!_days.TryGetValue(day, out (double, double) known))
        {
            known = WorkedOut(day);
            _days.Add(day, known);
        }

        return known;
    }

    private (double NoonMin, double DaylightHours) WorkedOut(int day)
    {
        DateOnly date = DateOnly.FromDayNumber(UnixDayNumber + day);
        if (date.Year is < FirstYear or > LastYear)
        {
            return (double.NaN, double.NaN);
        }

        SunDay sun = SunTimes.Of(date.Year, date.Month, date.Day, latitudeDeg, longitudeDeg);
        double hours = sun.Case switch
        {
            SunCase.PolarNight => 0,
            SunCase.PolarDay => 24,
            _ => ((sun.SunsetUtcMinutes ?? sun.SolarNoonUtcMinutes + (DayMin / 2)) - (sun.SunriseUtcMinutes ?? sun.SolarNoonUtcMinutes - (DayMin / 2))) / 60,
        };
        return ((day * DayMin) + sun.SolarNoonUtcMinutes, hours);
    }
}
