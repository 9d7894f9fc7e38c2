using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>Counts in how many draws each hour is a risk hour, and how many risk hours each draw has.</summary>
internal sealed class RiskTally(HourTable hours)
{
    private readonly int[] _drawsWithRisk = new int[hours.Count];
    private readonly bool[][] _risk = new bool[BiasDraws.Count][];

    /// <summary>Takes in the hours of one draw.</summary>
    public void Add(int draw, bool[] risk)
    {
        _risk[draw] = (bool[])risk.Clone();
        for (int h = 0; h < risk.Length; h++)
        {
            _drawsWithRisk[h] += risk[h] ? 1 : 0;
        }
    }

    /// <summary>Hours with data in [from, to).</summary>
    public int HoursWithData(int from, int to) => hours.HasData.AsSpan(from, to - from).Count(true);

    /// <summary>Share of draws by hour; NaN without data. [1]</summary>
    public double[] Probabilities()
    {
        double[] shares = new double[hours.Count];
        for (int h = 0; h < shares.Length; h++)
        {
            shares[h] = hours.HasData[h] ? (double)_drawsWithRisk[h] / BiasDraws.Count : double.NaN;
        }

        return shares;
    }

    /// <summary>
    /// Risk hours in [from, to): the hours that are one in at least half of the draws, so that they add up to what a calendar
    /// shows, with the 5 and 95 % ends of the draws' own counts.
    /// </summary>
    public Estimate Total(int from, int to)
    {
        int value = 0;
        for (int h = from; h < to; h++)
        {
            value += 2 * _drawsWithRisk[h] >= BiasDraws.Count ? 1 : 0;
        }

        return Estimates.OfCount(value, Counts(from, to));
    }

    /// <summary>Each draw's count of risk hours in [from, to).</summary>
    public double[] Counts(int from, int to)
    {
        double[] counts = new double[BiasDraws.Count];
        for (int draw = 0; draw < counts.Length; draw++)
        {
            counts[draw] = _risk[draw].AsSpan(from, to - from).Count(true);
        }

        return counts;
    }
}
