namespace ClimateLens.Science.Sun;

/// <summary>Apparent place of the sun seen from the centre of the earth, low-precision form.</summary>
/// <param name="DeclinationRad">Angle north of the equator. [rad]</param>
/// <param name="EquationOfTimeMin">Apparent minus mean solar time. [min]</param>
/// <remarks>
/// <para><b>Source:</b> [MEEUS98] chapters 22, 25 and 28, in the arrangement of [NOAASUN]; coefficients from memory, held to published
/// sunrise and position values by SunRowTests. UTC stands in for dynamical time (about 70 s, 0.001°).</para>
/// <para><b>Error:</b> about 0.01° in longitude for years 1900 to 2100.</para>
/// </remarks>
internal readonly record struct SunCoordinates(double DeclinationRad, double EquationOfTimeMin)
{
    private const double DegToRad = Math.PI / 180;

    /// <param name="unixSeconds">Seconds after 1970-01-01 00:00 UTC. [s]</param>
    public static SunCoordinates At(double unixSeconds)
    {
        double century = ((unixSeconds / 86400) + 2440587.5 - 2451545) / 36525;
        double meanLongitude = (280.46646 + (century * (36000.76983 + (century * 0.0003032)))) * DegToRad;
        double meanAnomaly = (357.52911 + (century * (35999.05029 - (century * 0.0001537)))) * DegToRad;
        double eccentricity = 0.016708634 - (century * (0.000042037 + (century * 0.0000001267)));
        double node = (125.04 - (1934.136 * century)) * DegToRad;
        double longitude = meanLongitude
            + ((EquationOfCentreDeg(meanAnomaly, century) - 0.00569 - (0.00478 * Math.Sin(node))) * DegToRad);
        double obliquity = (MeanObliquityDeg(century) + (0.00256 * Math.Cos(node))) * DegToRad;
        return new(
            Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude)),
            EquationOfTime(meanLongitude, meanAnomaly, eccentricity, obliquity));
    }

    private static double EquationOfCentreDeg(double meanAnomaly, double century) =>
        (Math.Sin(meanAnomaly) * (1.914602 - (century * (0.004817 + (century * 0.000014)))))
        + (Math.Sin(2 * meanAnomaly) * (0.019993 - (century * 0.000101)))
        + (Math.Sin(3 * meanAnomaly) * 0.000289);

    private static double MeanObliquityDeg(double century)
    {
        double seconds = 21.448 - (century * (46.815 + (century * (0.00059 - (century * 0.001813)))));
        return 23 + ((26 + (seconds / 60)) / 60);
    }

    private static double EquationOfTime(double longitude, double anomaly, double eccentricity, double obliquity)
    {
        double y = Math.Tan(obliquity / 2) * Math.Tan(obliquity / 2);
        double angle = (y * Math.Sin(2 * longitude))
            - (2 * eccentricity * Math.Sin(anomaly))
            + (4 * eccentricity * y * Math.Sin(anomaly) * Math.Cos(2 * longitude))
            - (0.5 * y * y * Math.Sin(4 * longitude))
            - (1.25 * eccentricity * eccentricity * Math.Sin(2 * anomaly));
        return 4 * angle / DegToRad;
    }
}
