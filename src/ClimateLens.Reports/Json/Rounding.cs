namespace ClimateLens.Reports.Json;

/// <summary>How numbers are shortened where they are written for other programs (review.json and the CSV files).</summary>
public static class Rounding
{
    private const int Decimals = 4;
    private const double SmallerNeedsDigits = 0.1;

    /// <summary>
    /// Four decimals, and for magnitudes under 0.1 four significant digits. Far below any sensor's resolution, so it
    /// takes nothing from a measurement; it only drops the noise of binary arithmetic.
    /// </summary>
    /// <param name="value">A finite number.</param>
    public static double Shorten(double value)
    {
        double size = Math.Abs(value);
        if (size is 0 or >= SmallerNeedsDigits)
        {
            return Math.Round(value, Decimals, MidpointRounding.AwayFromZero) + 0.0;
        }

        int digits = Decimals - 1 - (int)Math.Floor(Math.Log10(size));
        return digits > 15 ? value : Math.Round(value, digits, MidpointRounding.AwayFromZero);
    }
}
