namespace ClimateLens.HouseSimulator.Numbers;

/// <summary>
/// Transcendental functions rounded to twelve decimals. Mathematics libraries differ in the last bits between
/// platforms; rounding at once keeps those bits out of a simulation that switches vents and valves on thresholds.
/// Additions, products, quotients and square roots are exactly rounded everywhere and need no such care.
/// </summary>
public static class Portable
{
    private const int Decimals = 12;

    public static double Exp(double x) => Math.Round(Math.Exp(x), Decimals);

    public static double Sin(double radians) => Math.Round(Math.Sin(radians), Decimals);

    public static double Cos(double radians) => Math.Round(Math.Cos(radians), Decimals);

    /// <summary>1/(1 + e^-x), for any finite x.</summary>
    public static double Logistic(double x) => 1 / (1 + Exp(Math.Clamp(-x, -30, 9)));

    public static double FourthRoot(double x) => Math.Sqrt(Math.Sqrt(x));
}
