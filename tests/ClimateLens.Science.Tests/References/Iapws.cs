using static System.Math;

namespace ClimateLens.Science.Tests.References;

/// <summary>Equations of the International Association for the Properties of Water and Steam; coefficients from memory, which the
/// published check values in CheckRows confirm. T in K, result in Pa.</summary>
internal static class Iapws
{
    // Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22, auxiliary equation.
    public static ReferenceCurve WagnerPruss1993 { get; } = new("Wagner-Pruss 1993", false, WagnerPruss);

    // IAPWS R7-97(2012), eq. 30: the saturation line of IF97.
    public static ReferenceCurve If97 { get; } = new("IAPWS-IF97", false, Region4);

    // IAPWS R14-08(2011), eq. 6: sublimation pressure.
    public static ReferenceCurve SublimationR14 { get; } = new("IAPWS R14-08", true, Sublimation);

    private static double WagnerPruss(double t)
    {
        double x = 1 - (t / 647.096);
        double sum = (-7.85951783 * x) + (1.84408259 * Pow(x, 1.5)) - (11.7866497 * Pow(x, 3))
            + (22.6807411 * Pow(x, 3.5)) - (15.9618719 * Pow(x, 4)) + (1.80122502 * Pow(x, 7.5));
        return 22.064e6 * Exp(647.096 / t * sum);
    }

    private static double Region4(double t)
    {
        double v = t - (0.23855557567849 / (t - 650.17534844798));
        double a = (v * v) + (1167.0521452767 * v) - 724213.16703206;
        double b = (-17.073846940092 * v * v) + (12020.824702470 * v) - 3232555.0322333;
        double c = (14.915108613530 * v * v) - (4823.2657361591 * v) + 405113.40542057;
        double root = 2 * c / (-b + Sqrt((b * b) - (4 * a * c)));
        return 1e6 * Pow(root, 4);
    }

    private static double Sublimation(double t)
    {
        double theta = t / 273.16;
        double sum = (-21.2144006 * Pow(theta, 0.00333333333)) + (27.3203819 * Pow(theta, 1.20666667))
            - (6.10598130 * Pow(theta, 1.70333333));
        return 611.657 * Exp(sum / theta);
    }
}
