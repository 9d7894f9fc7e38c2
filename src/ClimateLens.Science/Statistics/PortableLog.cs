namespace ClimateLens.Science.Statistics;

/// <summary>Natural logarithm from exactly rounded operations only: the same bits on every platform.</summary>
/// <remarks>
/// <para><b>Formula:</b> x = m·2ᵏ with m between √½ and √2; <c>ln m = 2 artanh((m - 1)/(m + 1))</c> as a power series.</para>
/// <para><b>Error:</b> below 1e-15 relative to the larger of 1 and the value (SeededRandomTests). Finite normal x above 0.</para>
/// </remarks>
internal static class PortableLog
{
    private const double Ln2 = 0.693147180559945309417;
    private const double SqrtHalf = 0.70710678118654752440;

    private static ReadOnlySpan<double> Series =>
        [1.0 / 21, 1.0 / 19, 1.0 / 17, 1.0 / 15, 1.0 / 13, 1.0 / 11, 1.0 / 9, 1.0 / 7, 1.0 / 5, 1.0 / 3, 1];

    public static double Of(double x)
    {
        int exponent = Math.ILogB(x) + 1;
        double mantissa = Math.ScaleB(x, -exponent); // [0.5, 1)
        if (mantissa < SqrtHalf)
        {
            mantissa *= 2;
            exponent--;
        }

        double z = (mantissa - 1) / (mantissa + 1); // |z| < 0.1716: z^23/23 is below 1e-18
        double square = z * z, sum = 0;
        foreach (double coefficient in Series)
        {
            sum = (sum * square) + coefficient;
        }

        return (exponent * Ln2) + (2 * z * sum);
    }
}
