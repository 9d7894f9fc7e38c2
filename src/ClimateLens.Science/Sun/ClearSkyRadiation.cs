namespace ClimateLens.Science.Sun;

/// <summary>Global radiation on the level ground outdoors under a sky without clouds.</summary>
public static class ClearSkyRadiation
{
    private const double DegToRad = Math.PI / 180;

    /// <summary>Clear-sky global radiation on a horizontal surface. [W/m²]</summary>
    /// <param name="apparentElevationDeg">Elevation of the sun, refraction included, -90 to 90; 0 is returned at 0 and below. [°]</param>
    /// <exception cref="ArgumentOutOfRangeException">The elevation is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>1098 sin h·exp(-0.059/sin h)</c>. <b>Source:</b> [HAURWITZ45], coefficients seen in [PVLIB].</para>
    /// <para><b>Range:</b> any sun above the horizon; takes neither haze, water vapour, height nor the season's distance into account, so
    /// it is a yardstick for outdoor sensors, not a truth. [RENO12] found it the best of the models that know only the sun's elevation.
    /// <b>Error:</b> not known here for a single hour; 10 % and more in hazy or very clear air (from memory).</para>
    /// <para><b>Check value:</b> 30° gives 487.9 W/m², 90° 1035.1 W/m² ([PVLIB] tests).</para>
    /// </remarks>
    public static double GlobalWm2(double apparentElevationDeg)
    {
        double sine = Math.Sin(Guard.Within(apparentElevationDeg, -90, 90, "°") * DegToRad);
        return sine <= 0 ? 0 : 1098 * sine * Math.Exp(-0.059 / sine);
    }
}
