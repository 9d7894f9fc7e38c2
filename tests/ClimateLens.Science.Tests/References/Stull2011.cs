using static System.Math;

namespace ClimateLens.Science.Tests.References;

/// <summary>
/// Wet bulb by Stull 2011, J. Appl. Meteorol. Climatol. 50:2267: a fit for about 101.3 kPa, 5 to 99 %, -20 to 50 °C; coefficients from
/// memory, confirmed by its worked example. Its own error is -1.0 to +0.65 K.
/// </summary>
internal static class Stull2011
{
    public static double WetBulbC(double t, double rh) =>
        (t * Atan(0.151977 * Sqrt(rh + 8.313659))) + Atan(t + rh) - Atan(rh - 1.676331)
        + (0.00391838 * Pow(rh, 1.5) * Atan(0.023101 * rh)) - 4.686035;
}
