namespace ClimateLens.Science.Psychrometrics;

/// <summary>The Hyland-Wexler equations for saturation vapour pressure: the reference that the Magnus sets are measured against.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>ln(es/Pa) = C₋₁/T + C₀ + C₁T + C₂T² + C₃T³ + C₄T⁴ + C₅ ln T</c>, T in K; slope by its derivative;
/// inverse by Newton steps on ln e from the Magnus value.</para>
/// <para><b>Source:</b> [HW83] as printed in [ASHRAE17] chapter 1, equations 5 and 6. Water 0 to 200 °C, ice -100 to 0 °C; below
/// 0 °C the water equation is extrapolated, as all psychrometry over supercooled water does.</para>
/// <para><b>Error:</b> 0.03 % against [WP93] and [IF97] from 0 to 50 °C; inverse to 1e-9 K (CurveErrorTests, RoundTripTests).</para>
/// <para><b>Check value:</b> es(25 °C) is 3.1697 kPa, es(50 °C) 12.3513 kPa within 0.03 % ([ASHRAE17] table 3).</para>
/// </remarks>
public sealed record HylandWexler : SaturationCurve
{
    private readonly double inverse, constant, linear, square, cube, fourth, logarithm;

    private HylandWexler(string name, bool overIce, double lowestC, double highestC, ReadOnlySpan<double> terms)
        : base(name, overIce, lowestC, highestC) =>
        (inverse, constant, linear, square, cube, fourth, logarithm) =
            (terms[0], terms[1], terms[2], terms[3], terms[4], terms[5], terms[6]);

    /// <summary>Over liquid water, 0 to 200 °C, used here down to -100 °C.</summary>
    public static new HylandWexler Water { get; } = new(
        "Hyland-Wexler, water [HW83]", false, 0, 200,
        [-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0, 6.5459673]);

    /// <summary>Over ice, -100 to 0 °C.</summary>
    public static new HylandWexler Ice { get; } = new(
        "Hyland-Wexler, ice [HW83]", true, -100, 0,
        [-5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019]);

    internal override double VapourPressureKPa(double temperatureC) =>
        Math.Exp(LogPascal(temperatureC + Limits.ZeroCelsiusK)) / 1000;

    internal override double SlopeKPaPerK(double temperatureC) =>
        VapourPressureKPa(temperatureC) * LogSlope(temperatureC + Limits.ZeroCelsiusK);

    internal override double TemperatureC(double vapourPressureKPa)
    {
        double target = Math.Log(vapourPressureKPa * 1000);
        MagnusForm start = OverIce ? MagnusForm.Wmo8Ice : MagnusForm.Wmo8Water;
        double t = start.TemperatureC(vapourPressureKPa);
        double step;
        int left = 50;
        do
        {
            double kelvin = t + Limits.ZeroCelsiusK;
            step = (LogPascal(kelvin) - target) / LogSlope(kelvin);
            t -= step;
        }
        while (Math.Abs(step) > 1e-10 && --left > 0);

        return Math.Abs(step) <= 1e-9 ? t : double.NaN;
    }

    private double LogPascal(double kelvin) =>
        (inverse / kelvin) + constant
        + (kelvin * (linear + (kelvin * (square + (kelvin * (cube + (kelvin * fourth)))))))
        + (logarithm * Math.Log(kelvin));

    private double LogSlope(double kelvin) =>
        (-inverse / (kelvin * kelvin)) + linear
        + (kelvin * ((2 * square) + (kelvin * ((3 * cube) + (kelvin * 4 * fourth)))))
        + (logarithm / kelvin);
}
