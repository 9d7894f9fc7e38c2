using static System.Math;

namespace ClimateLens.Science.Tests.References;

/// <summary>Published saturation equations that the program does not use. T in K, result in Pa.</summary>
internal static class ReferenceCurves
{
    // Sonntag 1990, Z. Meteorol. 70; coefficients seen in public code.
    public static ReferenceCurve Sonntag1990Water { get; } = new("Sonntag 1990, water", false, t => 100 * Exp(
        (-6096.9385 / t) + 16.635794 - (2.711193e-2 * t) + (1.673952e-5 * t * t) + (2.433502 * Log(t))));

    public static ReferenceCurve Sonntag1990Ice { get; } = new("Sonntag 1990, ice", true, t => 100 * Exp(
        (-6024.5282 / t) + 24.7219 + (1.0613868e-2 * t) - (1.3198825e-5 * t * t) - (0.49382577 * Log(t))));

    // Hardy 1998, ITS-90 formulations; coefficients seen in public code.
    public static ReferenceCurve Hardy1998Water { get; } = new("Hardy 1998, water", false, t => Exp(
        (-2836.5744 / (t * t)) - (6028.076559 / t) + 19.54263612 - (2.737830188e-2 * t) + (1.6261698e-5 * t * t)
        + (7.0229056e-10 * t * t * t) - (1.8680009e-13 * t * t * t * t) + (2.7150305 * Log(t))));

    public static ReferenceCurve Hardy1998Ice { get; } = new("Hardy 1998, ice", true, t => Exp(
        (-5866.6426 / t) + 22.32870244 + (1.39387003e-2 * t) - (3.4262402e-5 * t * t)
        + (2.7040955e-8 * t * t * t) + (0.67063522 * Log(t))));

    // Buck Research 1996 and Buck 1981 e_w4; coefficients partly from memory.
    public static ReferenceCurve Buck1996Water { get; } = Celsius("Buck 1996, water", false,
        t => 611.21 * Exp((18.678 - (t / 234.5)) * t / (257.14 + t)));

    public static ReferenceCurve Buck1996Ice { get; } = Celsius("Buck 1996, ice", true,
        t => 611.15 * Exp((23.036 - (t / 333.7)) * t / (279.82 + t)));

    public static ReferenceCurve Buck1981Ew4 { get; } = Celsius("Buck 1981 e_w4", false,
        t => 611.21 * Exp((18.729 - (t / 227.3)) * t / (257.87 + t)));

    // Murray 1967, J. Appl. Meteorol. 6; coefficients seen in public code.
    public static ReferenceCurve Murray1967Water { get; } = Celsius("Tetens-Murray 1967, water", false,
        t => 610.78 * Exp(17.269388 * t / (237.3 + t)));

    public static ReferenceCurve Murray1967Ice { get; } = Celsius("Tetens-Murray 1967, ice", true,
        t => 610.78 * Exp(21.8745584 * t / (265.5 + t)));

    // Buck 1981 e_i1; coefficients seen in public code.
    public static ReferenceCurve Buck1981Ei1 { get; } = Celsius("Buck 1981 e_i1", true,
        t => 611.15 * Exp(22.542 * t / (273.48 + t)));

    // Goff and Gratch 1946 as in the Smithsonian tables (steam point 373.16 K, 1013.246 hPa); from memory.
    public static ReferenceCurve GoffGratch1946 { get; } = new("Goff-Gratch 1946", false, t => 101324.6 * Pow(10,
        (-7.90298 * ((373.16 / t) - 1)) + (5.02808 * Log10(373.16 / t))
        - (1.3816e-7 * (Pow(10, 11.344 * (1 - (t / 373.16))) - 1))
        + (8.1328e-3 * (Pow(10, -3.49149 * ((373.16 / t) - 1)) - 1))));

    private static ReferenceCurve Celsius(string name, bool overIce, Func<double, double> pascal) =>
        new(name, overIce, kelvin => pascal(kelvin - 273.15));
}
