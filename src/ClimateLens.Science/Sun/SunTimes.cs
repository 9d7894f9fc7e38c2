namespace ClimateLens.Science.Sun;

/// <summary>Sunrise, solar noon and sunset.</summary>
public static class SunTimes
{
    /// <summary>True elevation of the sun's centre at sunrise and sunset: 34' refraction and 16' half-diameter. [°]</summary>
    public const double HorizonDeg = -0.833;

    /// <summary>The sun's day nearest to local solar noon of a civil date.</summary>
    /// <param name="year">Year, 1900 to 2100.</param>
    /// <param name="month">Month, 1 to 12.</param>
    /// <param name="day">Day of the month.</param>
    /// <param name="latitudeDeg">Latitude, -90 to 90, north positive. [°]</param>
    /// <param name="longitudeDeg">Longitude, -180 to 180, east positive. [°]</param>
    /// <exception cref="ArgumentOutOfRangeException">The date or the place is impossible, or the place is NaN.</exception>
    /// <returns>The events, in minutes after 00:00 UTC of the date.</returns>
    /// <remarks>
    /// <para><b>Formula:</b> noon where UTC plus equation of time plus 4 min/° of longitude is 12:00; sunrise and sunset where
    /// <see cref="SolarPosition.ElevationDeg"/> passes <see cref="HorizonDeg"/> in the half day before and after, found by bisection.
    /// Flat horizon at sea level, standard refraction.</para>
    /// <para><b>Source:</b> [MEEUS98] chapters 15 and 25, [NOAASUN]. <b>Error:</b> below 0.03 min against the solar position algorithm
    /// [SPA] at 35 to 40° latitude (SunRowTests); real refraction moves an event by a minute or more.</para>
    /// </remarks>
    public static SunDay Of(int year, int month, int day, double latitudeDeg, double longitudeDeg)
    {
        Guard.Within(year, 1900, 2100, "(year)");
        SolarPosition.CheckPlace(latitudeDeg, longitudeDeg);
        Guard.Finite(latitudeDeg);
        Guard.Finite(longitudeDeg);
        double midnight = (new DateOnly(year, month, day).DayNumber - UnixDayNumber) * 86400.0;
        double noon = Noon(midnight, longitudeDeg);

        double Height(double minutes) =>
            SolarPosition.ElevationDeg(midnight + (minutes * 60), latitudeDeg, longitudeDeg) - HorizonDeg;

        if (Height(noon) < 0)
        {
            return new(null, null, noon, SunCase.PolarNight);
        }

        double? sunrise = Crossing(Height, noon - 720, noon);
        double? sunset = Crossing(Height, noon + 720, noon);
        SunCase sunCase = sunrise is null && sunset is null ? SunCase.PolarDay : SunCase.RisesAndSets;
        return new(sunrise, sunset, noon, sunCase);
    }

    private const int UnixDayNumber = 719162;

    private static double Noon(double midnightUnixSeconds, double longitudeDeg)
    {
        double noon = 720 - (4 * longitudeDeg);
        for (int i = 0; i < 3; i++)
        {
            // The equation of time moves by at most 30 s a day: three rounds settle it below a microsecond.
            noon = 720 - (4 * longitudeDeg) - SunCoordinates.At(midnightUnixSeconds + (noon * 60)).EquationOfTimeMin;
        }

        return noon;
    }

    /// <summary>Where the height passes zero between a minute when the sun is down and one when it is up; null if it is never down.</summary>
    private static double? Crossing(Func<double, double> height, double down, double up)
    {
        if (height(down) >= 0)
        {
            return null;
        }

        while (Math.Abs(up - down) > 1e-5)
        {
            double middle = (up + down) / 2;
            (down, up) = height(middle) < 0 ? (middle, up) : (down, middle);
        }

        return (up + down) / 2;
    }
}
