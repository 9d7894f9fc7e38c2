namespace ClimateLens.Logs.Times;

/// <summary>Reads a decimal number without losing digits to binary fractions.</summary>
internal static class DecimalScan
{
    /// <summary>What <c>fraction</c> counts in.</summary>
    public const long Ones = 1_000_000_000_000;

    private const int MostWholeDigits = 18;
    private const int FractionDigits = 12;

    /// <summary>Reads digits, and a fraction where there is one; further digits of it than twelve are passed over.</summary>
    /// <param name="scan">The text.</param>
    /// <param name="comma">Whether a comma is a decimal mark as well as the point.</param>
    /// <param name="whole">The whole part.</param>
    /// <param name="fraction">The fraction in 10^-12.</param>
    public static bool TryRead(ref DigitScan scan, bool comma, out long whole, out long fraction)
    {
        fraction = 0;
        if (!TryDigits(ref scan, MostWholeDigits, out whole, out int digits) || digits > MostWholeDigits)
        {
            return false;
        }

        if (!scan.Mark((byte)'.') && !(comma && scan.Mark((byte)',')))
        {
            return true;
        }

        if (!TryDigits(ref scan, FractionDigits, out fraction, out digits))
        {
            return false;
        }

        for (int i = digits; i < FractionDigits; i++)
        {
            fraction *= 10;
        }

        return true;
    }

    private static bool TryDigits(ref DigitScan scan, int kept, out long value, out int digits)
    {
        ReadOnlySpan<byte> rest = scan.Rest;
        value = 0;
        for (digits = 0; digits < rest.Length && (uint)(rest[digits] - '0') <= 9; digits++)
        {
            value = digits < kept ? (value * 10) + (rest[digits] - '0') : value;
        }

        scan.Skip(digits);
        return digits > 0;
    }
}
