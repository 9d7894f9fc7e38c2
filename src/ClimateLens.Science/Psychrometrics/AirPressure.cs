using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Air pressure where no barometer stands. Weather moves it by about 3 % either way.</summary>
public static class AirPressure
{
    /// <summary>Standard air pressure at sea level. [kPa]</summary>
    public static KiloPascal StandardSeaLevel => new(101.325);

    /// <summary>Air pressure of the standard atmosphere at a height. [kPa]</summary>
    /// <param name="elevation">Height above sea level, -500 to 9000. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is out of range.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>101.325(1 - 2.25577e-5 z)^5.2559</c>. <b>Source:</b> [ASHRAE17] chapter 1, eq. 3. <b>Error:</b> 1 Pa of its table 1 up to
    /// 1000 m. <b>Check value:</b> 1000 m gives 89.874 kPa.
    /// </remarks>
    public static KiloPascal AtElevation(Metre elevation) =>
        new(101.325 * Math.Pow(1 - (2.25577e-5 * Height(elevation)), 5.2559));

    /// <summary>Air pressure at a height as reference evapotranspiration takes it. [kPa]</summary>
    /// <param name="elevation">Height above sea level, -500 to 9000. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is out of range.</exception>
    /// <remarks>
    /// <b>Formula:</b> <c>101.3((293 - 0.0065 z)/293)^5.26</c>, an atmosphere of 20 °C at sea level. <b>Source:</b> [FAO56] eq. 7.
    /// <b>Error:</b> within 0.5 % of <see cref="AtElevation"/> up to 2000 m. <b>Check value:</b> 1800 m gives 81.8 kPa ([FAO56] example 2).
    /// </remarks>
    public static KiloPascal AtElevationFao56(Metre elevation) =>
        new(101.3 * Math.Pow((293 - (0.0065 * Height(elevation))) / 293, 5.26));

    private static double Height(Metre elevation) => Guard.Within(elevation.Value, -500, 9000, "m", nameof(elevation));
}
