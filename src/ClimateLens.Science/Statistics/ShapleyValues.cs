using System.Numerics;

namespace ClimateLens.Science.Statistics;

/// <summary>What each of several causes adds to a total when they work together: exact Shapley values.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>φᵢ = Σ |S|! (n - |S| - 1)!/n! · (v(S ∪ i) - v(S))</c> over every set S of the other causes: what a cause adds, taken as the mean
/// over all orders in which the causes could come. So the order does not matter, a cause that adds nothing gets nothing, and all add up to v(all) - v(none).</para>
/// <para><b>Source:</b> [SHAPLEY53], from memory; the formula as in public re-statements. <b>Range:</b> 1 to <see cref="MostPlayers"/> causes.</para>
/// <para><b>Error:</b> sums to the total within 1e-9 of the largest value (ShapleyValuesTests). The shares are as true as the values are.</para>
/// </remarks>
public static class ShapleyValues
{
    /// <summary>Most causes: 2⁸ values.</summary>
    public const int MostPlayers = 8;

    /// <summary>Shares of the total, one a cause, in the unit of the values.</summary>
    /// <param name="values">Value of every set of causes, 2ⁿ of them: bit i of the place tells whether cause i takes part; place 0 is no cause at all.</param>
    /// <returns>n shares; NaN where a value that they need is NaN.</returns>
    /// <exception cref="ArgumentException">The number of values is not 2ⁿ with n from 1 to 8.</exception>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        double[] shares = new double[Players(values.Length)];
        Of(values, shares);
        return shares;
    }

    /// <summary>As <see cref="Of(ReadOnlySpan{double})"/> without allocating.</summary>
    /// <param name="values">Value of every set of causes.</param>
    /// <param name="shares">Receives the shares.</param>
    /// <exception cref="ArgumentException">The number of values is not 2ⁿ with n from 1 to 8, or that of shares not n.</exception>
    public static void Of(ReadOnlySpan<double> values, Span<double> shares)
    {
        int players = Players(values.Length);
        Guard.SameLength(players, shares.Length);
        Span<double> weights = stackalloc double[players];
        Weigh(weights);
        for (int player = 0; player < players; player++)
        {
            double share = 0;
            for (int without = 0; without < values.Length; without++)
            {
                if ((without & (1 << player)) == 0)
                {
                    share += weights[BitOperations.PopCount((uint)without)] * (values[without | (1 << player)] - values[without]);
                }
            }

            shares[player] = share;
        }
    }

    private static int Players(int sets)
    {
        int players = sets > 0 ? BitOperations.Log2((uint)sets) : 0;
        return BitOperations.IsPow2(sets) && players is >= 1 and <= MostPlayers
            ? players
            : throw new ArgumentException(FormattableString.Invariant($"There are {sets} values; allowed: 2 to {1 << MostPlayers}, a power of two."), nameof(sets));
    }

    // |S|! (n - |S| - 1)!/n! = 1/(n · (n - 1 over |S|)).
    private static void Weigh(Span<double> weights)
    {
        double choices = 1;
        for (int size = 0; size < weights.Length; size++)
        {
            weights[size] = 1 / (weights.Length * choices);
            choices = choices * (weights.Length - 1 - size) / (size + 1);
        }
    }
}
