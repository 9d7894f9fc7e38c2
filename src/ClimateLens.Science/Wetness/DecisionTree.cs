namespace ClimateLens.Science.Wetness;

/// <summary>Second opinion on wet leaves for the open field: a decision tree over dew-point depression, wind and humidity. Unfit under glass.</summary>
/// <remarks>
/// <para><b>Why unfit:</b> the tree was grown on weather of the open field. In air of up to 0.5 m/s, as under glass, and 8 to 35 °C, wind and
/// inequality hardly count: all that is left is "wet from 77 to 83 % humidity" (test), which tells far too many wet hours. Shown for
/// comparison only; never let it decide.</para>
/// <para><b>Formula:</b> dry where <c>DPD ≥ 3.7</c>; below 2.5 m/s wet where <c>1.6064 √t + 0.0036 t² + 0.1531 RH - 0.4599 u·DPD - 0.0035 t·RH &gt; 14.4674</c>;
/// else dry where <c>RH &lt; 87.8</c>, wet where <c>0.7921 √t + 0.0046 RH² - 2.3889 u - 0.0390 t·u + 1.0613 u·DPD &gt; 37.0</c>.</para>
/// <para><b>Source:</b> [GLEASON94], [KIM02], coefficients as in three public transcriptions. These print RH in the last inequality without the square, which
/// could then never hold (at most 16 against 37); the square is our reading. <b>Range:</b> air from 0 °C, wind at 0.3 m over grass.</para>
/// </remarks>
public static class DecisionTree
{
    /// <summary>Dew-point depression from which leaves are dry. [K]</summary>
    public const double DryFromK = 3.7;

    /// <summary>Wind from which the second branch rules. [m/s]</summary>
    public const double WindyFromMs = 2.5;

    /// <summary>Humidity below which leaves are dry in wind. [%]</summary>
    public const double DryInWindBelowPct = 87.8;

    private const double CalmLimit = 14.4674;
    private const double WindyLimit = 37.0;

    /// <summary>Wet (1), dry (0) or not known (NaN) for each step.</summary>
    /// <param name="airC">Air temperature; below 0 not known. [°C]</param>
    /// <param name="humidityPct">Relative humidity. [%]</param>
    /// <param name="dewPointC">Dew point. [°C]</param>
    /// <param name="airSpeedMs">Speed of the air. [m/s]</param>
    /// <param name="wet">Receives the state.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <remarks>Allocates nothing.</remarks>
    public static void Of(
        ReadOnlySpan<double> airC, ReadOnlySpan<double> humidityPct, ReadOnlySpan<double> dewPointC, ReadOnlySpan<double> airSpeedMs,
        Span<double> wet)
    {
        Guard.SameLength(airC.Length, humidityPct.Length);
        Guard.SameLength(airC.Length, dewPointC.Length);
        Guard.SameLength(airC.Length, airSpeedMs.Length);
        Guard.SameLength(airC.Length, wet.Length);
        for (int i = 0; i < wet.Length; i++)
        {
            wet[i] = State(airC[i], humidityPct[i], airC[i] - dewPointC[i], airSpeedMs[i]);
        }
    }

    /// <summary>Left side of the first inequality. [1]</summary>
    internal static double Calm(double airC, double humidityPct, double depressionK, double speedMs) =>
        (1.6064 * Math.Sqrt(airC)) + (0.0036 * airC * airC) + (0.1531 * humidityPct) - (0.4599 * speedMs * depressionK)
        - (0.0035 * airC * humidityPct);

    internal static double State(double airC, double humidityPct, double depressionK, double speedMs)
    {
        if (double.IsNaN(humidityPct + depressionK + speedMs) || !(airC >= 0) || !(speedMs >= 0))
        {
            return double.NaN;
        }

        if (depressionK >= DryFromK)
        {
            return 0;
        }

        if (speedMs < WindyFromMs)
        {
            return Calm(airC, humidityPct, depressionK, speedMs) > CalmLimit ? 1 : 0;
        }

        return humidityPct >= DryInWindBelowPct && Windy(airC, humidityPct, depressionK, speedMs) > WindyLimit ? 1 : 0;
    }

    private static double Windy(double airC, double humidityPct, double depressionK, double speedMs) =>
        (0.7921 * Math.Sqrt(airC)) + (0.0046 * humidityPct * humidityPct) - (2.3889 * speedMs) - (0.0390 * airC * speedMs)
        + (1.0613 * speedMs * depressionK);
}
