namespace ClimateLens.Analysis.Foliage;

/// <summary>Works through many draws, several at a time. Holds the memory for these.</summary>
internal sealed class FoliageDraws
{
    private readonly FoliageHours[] _several;

    /// <summary>Prepares.</summary>
    /// <param name="make">Makes the hours of one draw; called several times, for the same leaves each time.</param>
    public FoliageDraws(Func<FoliageHours> make) => _several = [.. Enumerable.Range(0, FoliageHours.Together).Select(_ => make())];

    /// <summary>The first of these.</summary>
    public FoliageHours First => _several[0];

    /// <summary>Runs all draws.</summary>
    /// <param name="count">Number of draws.</param>
    /// <param name="take">Lets one take the errors of a draw.</param>
    /// <param name="done">Takes what came of it, in the order of the draws; it is good until the next one.</param>
    public void Run(int count, Action<int, FoliageHours> take, Action<int, FoliageHours> done)
    {
        for (int first = 0; first < count; first += _several.Length)
        {
            Span<FoliageHours> together = _several.AsSpan(0, Math.Min(_several.Length, count - first));
            for (int i = 0; i < together.Length; i++)
            {
                take(first + i, together[i]);
            }

            FoliageHours.Judge(together);
            for (int i = 0; i < together.Length; i++)
            {
                done(first + i, together[i]);
            }
        }
    }
}
