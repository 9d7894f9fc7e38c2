namespace ClimateLens.Science.Sun;

/// <summary>Where the centre of the sun stands in the sky, without refraction.</summary>
/// <remarks>
/// <para><b>Formula:</b> hour angle <c>H = (UTC minutes + equation of time)/4 + longitude - 180°</c>;
/// <c>sin(elevation) = sin φ sin δ + cos φ cos δ cos H</c>.</para>
/// <para><b>Source:</b> [MEEUS98] chapter 13 and [NOAASUN]. <b>Error:</b> below 0.02° (SunRowTests), years 1900 to 2100.</para>
/// </remarks>
public static class SolarPosition
{
    private const double DegToRad = Math.PI / 180;

    /// <summary>True elevation of the sun's centre above the horizon, no refraction. [°]</summary>
    /// <param name="unixSeconds">Seconds after 1970-01-01 00:00 UTC. [s]</param>
    /// <param name="latitudeDeg">Latitude, -90 to 90, north positive. [°]</param>
    /// <param name="longitudeDeg">Longitude, -180 to 180, east positive. [°]</param>
    public static double ElevationDeg(double unixSeconds, double latitudeDeg, double longitudeDeg)
    {
        CheckPlace(latitudeDeg, longitudeDeg);
        SunCoordinates sun = SunCoordinates.At(unixSeconds);
        return ElevationRad(sun, HourAngleRad(sun, unixSeconds, longitudeDeg), latitudeDeg * DegToRad) / DegToRad;
    }

    /// <summary>Azimuth of the sun's centre, 0 to 360, clockwise from north. [°]</summary>
    /// <param name="unixSeconds">Seconds after 1970-01-01 00:00 UTC. [s]</param>
    /// <param name="latitudeDeg">Latitude, -90 to 90, north positive. [°]</param>
    /// <param name="longitudeDeg">Longitude, -180 to 180, east positive. [°]</param>
    public static double AzimuthDeg(double unixSeconds, double latitudeDeg, double longitudeDeg)
    {
        CheckPlace(latitudeDeg, longitudeDeg);
        SunCoordinates sun = SunCoordinates.At(unixSeconds);
        double hourAngle = HourAngleRad(sun, unixSeconds, longitudeDeg);
        double latitude = latitudeDeg * DegToRad;
        double fromSouth = Math.Atan2(
            Math.Sin(hourAngle),
            (Math.Cos(hourAngle) * Math.Sin(latitude)) - (Math.Tan(sun.DeclinationRad) * Math.Cos(latitude)));
        double azimuth = ((fromSouth / DegToRad) + 180) % 360;
        return azimuth < 0 ? azimuth + 360 : azimuth;
    }

    internal static void CheckPlace(double latitudeDeg, double longitudeDeg)
    {
        Guard.Within(latitudeDeg, -90, 90, "°");
        Guard.Within(longitudeDeg, -180, 180, "°");
    }

    private static double HourAngleRad(SunCoordinates sun, double unixSeconds, double longitudeDeg)
    {
        double days = unixSeconds / 86400;
        double utcMinutes = (days - Math.Floor(days)) * 1440;
        return (((utcMinutes + sun.EquationOfTimeMin) / 4) + longitudeDeg - 180) * DegToRad;
    }

    private static double ElevationRad(SunCoordinates sun, double hourAngleRad, double latitudeRad)
    {
        double sine = (Math.Sin(latitudeRad) * Math.Sin(sun.DeclinationRad))
            + (Math.Cos(latitudeRad) * Math.Cos(sun.DeclinationRad) * Math.Cos(hourAngleRad));
        return Math.Asin(Math.Clamp(sine, -1, 1));
    }
}
