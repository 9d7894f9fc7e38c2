namespace ClimateLens.Science.Infection;

/// <summary>And over conditions that may not be known: 1 true, 0 false, NaN not known.</summary>
internal static class ThreeValued
{
    /// <summary>0 as soon as one is false, else NaN as soon as one is not known, else 1.</summary>
    public static double And(double first, double second) =>
        first == 0 || second == 0 ? 0 : first * second;

    /// <summary>Whether a value lies in a range, ends included; NaN for not known.</summary>
    public static double Within(double value, double low, double high) =>
        double.IsNaN(value) ? double.NaN : value >= low && value <= high ? 1 : 0;

    public static double Above(double value, double limit) => double.IsNaN(value) ? double.NaN : value > limit ? 1 : 0;

    public static double Below(double value, double limit) => double.IsNaN(value) ? double.NaN : value < limit ? 1 : 0;
}
