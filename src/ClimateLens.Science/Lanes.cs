using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace ClimateLens.Science;

/// <summary>Four numbers worked out at once. Each comes out, to the last bit, as it would alone.</summary>
internal static class Lanes
{
    /// <summary>How many there are.</summary>
    public const int Count = 4;

    /// <summary>A function of one number.</summary>
    public interface IScalar
    {
        /// <summary>Its value.</summary>
        static abstract double Of(double x);
    }

    /// <summary>A function of each.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Map<TFunction>(Vector256<double> x)
        where TFunction : IScalar
        => Vector256.Create(TFunction.Of(x[0]), TFunction.Of(x[1]), TFunction.Of(x[2]), TFunction.Of(x[3]));

    /// <summary>The exponential of each; NaN of NaN.</summary>
    /// <remarks>The library leaves its fast way for all four where one is not a number, and its ways differ in the last bit; so none is shown to it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Exp(Vector256<double> x)
    {
        Vector256<double> known = Known(x);
        return Vector256.ConditionalSelect(known, Vector256.Exp(x & known), x);
    }

    /// <summary>All where the numbers are at least the one bound and at most the other; NaN elsewhere.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Possible(Vector256<double> x, double low, double high) => Vector256.ConditionalSelect(
        Vector256.GreaterThanOrEqual(x, Vector256.Create(low)) & Vector256.LessThanOrEqual(x, Vector256.Create(high)), x, Vector256.Create(double.NaN));

    /// <summary>Where a number is known: not NaN.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Known(Vector256<double> x) => Vector256.Equals(x, x);

    /// <summary>Whether any is chosen.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Vector256<double> chosen) => Vector256.ExtractMostSignificantBits(chosen) != 0;
}
