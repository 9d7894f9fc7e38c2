namespace ClimateLens.Science.Statistics;

/// <summary>A random source that gives the same numbers for the same seed on every platform.</summary>
/// <param name="seed">Any number; two seeds give two unrelated streams.</param>
/// <remarks>
/// <para><b>Formula:</b> xoshiro256**, its 256 bits of state filled by SplitMix64 from the seed. Normal deviates by the polar
/// method, with a logarithm made of exactly rounded operations, so that no platform's mathematics library has a say.</para>
/// <para><b>Source:</b> [BV21] and [SLF14]; normal deviates [MB64]. Not for secrets. Not safe for use by several threads at once.</para>
/// </remarks>
public sealed class SeededRandom(ulong seed)
{
    private ulong s0 = SplitMix64(ref seed);
    private ulong s1 = SplitMix64(ref seed);
    private ulong s2 = SplitMix64(ref seed);
    private ulong s3 = SplitMix64(ref seed);
    private double? spareNormal;

    internal SeededRandom(ulong state0, ulong state1, ulong state2, ulong state3)
        : this(0) => (s0, s1, s2, s3) = (state0, state1, state2, state3);

    /// <summary>The next 64 random bits.</summary>
    public ulong NextUInt64()
    {
        ulong result = ulong.RotateLeft(s1 * 5, 7) * 9;
        ulong shifted = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= shifted;
        s3 = ulong.RotateLeft(s3, 45);
        return result;
    }

    /// <summary>A number of the uniform distribution on [0, 1): a multiple of 2⁻⁵³. [1]</summary>
    public double NextDouble() => (NextUInt64() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A number of the uniform distribution on [<paramref name="low"/>, <paramref name="high"/>).</summary>
    /// <param name="low">Lower end, finite.</param>
    /// <param name="high">Upper end, finite, not below <paramref name="low"/>.</param>
    public double NextUniform(double low, double high)
    {
        Guard.Finite(low);
        Guard.Finite(high);
        Guard.Within(high, low, double.MaxValue, "(not below low)");
        double value = low + ((high - low) * NextDouble());
        return value < high || low == high ? value : Math.BitDecrement(high); // rounding can reach the end
    }

    /// <summary>A number of the normal distribution with mean 0 and standard deviation 1. [1]</summary>
    public double NextNormal()
    {
        if (spareNormal is double spare)
        {
            spareNormal = null;
            return spare;
        }

        double x, y, square;
        do
        {
            x = (2 * NextDouble()) - 1;
            y = (2 * NextDouble()) - 1;
            square = (x * x) + (y * y);
        }
        while (square is >= 1 or 0);

        double factor = Math.Sqrt(-2 * PortableLog.Of(square) / square);
        spareNormal = y * factor;
        return x * factor;
    }

    internal static ulong SplitMix64(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
