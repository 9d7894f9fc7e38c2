using System.Runtime.CompilerServices;

namespace ClimateLens.Science;

/// <summary>The one home of argument checks: what is impossible throws, with the value and the allowed range.</summary>
/// <remarks>NaN passes every range check, since a missing input gives a missing result; it fails <see cref="Finite"/>.</remarks>
internal static class Guard
{
    public static double Within(
        double value, double lowest, double highest, string unit,
        [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (value < lowest || value > highest)
        {
            Throw(value, FormattableString.Invariant($"{lowest} to {highest} {unit}"), name);
        }

        return value;
    }

    public static double AboveUpTo(
        double value, double floor, double highest, string unit,
        [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (value <= floor || value > highest)
        {
            Throw(value, FormattableString.Invariant($"above {floor} up to {highest} {unit}"), name);
        }

        return value;
    }

    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!double.IsFinite(value))
        {
            Throw(value, "a finite number", name);
        }

        return value;
    }

    public static void SameLength(int expected, int actual, [CallerArgumentExpression(nameof(actual))] string name = "")
    {
        if (expected != actual)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"The columns differ in length: {actual}, expected {expected}."), name);
        }
    }

    private static void Throw(double value, string allowed, string name) =>
        throw new ArgumentOutOfRangeException(
            name, value, FormattableString.Invariant($"The value {value} is impossible here; allowed: {allowed}."));
}
