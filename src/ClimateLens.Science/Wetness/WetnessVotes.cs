namespace ClimateLens.Science.Wetness;

/// <summary>Counts opinions on wet leaves, hour by hour or step by step.</summary>
/// <param name="wet">Number of opinions that say wet; begin with zeros.</param>
/// <param name="known">Number of opinions that say anything; begin with zeros.</param>
/// <remarks>Allocates nothing: both columns belong to the caller.</remarks>
public readonly ref struct WetnessVotes(Span<int> wet, Span<int> known)
{
    private readonly Span<int> _wet = wet;
    private readonly Span<int> _known = known;

    /// <summary>Adds an opinion.</summary>
    /// <param name="states">1 for wet, 0 for dry, NaN for no opinion.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public void Add(ReadOnlySpan<double> states)
    {
        Guard.SameLength(_wet.Length, states.Length);
        Guard.SameLength(_wet.Length, _known.Length);
        for (int i = 0; i < states.Length; i++)
        {
            _known[i] += double.IsNaN(states[i]) ? 0 : 1;
            _wet[i] += states[i] == 1 ? 1 : 0;
        }
    }

    /// <summary>Share of the opinions that say wet: 0 or 1 where all agree, between where they part; NaN where none speaks. [1]</summary>
    /// <param name="share">Receives the share.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public void ShareWet(Span<double> share)
    {
        Guard.SameLength(_wet.Length, share.Length);
        for (int i = 0; i < share.Length; i++)
        {
            share[i] = _known[i] == 0 ? double.NaN : (double)_wet[i] / _known[i];
        }
    }
}
