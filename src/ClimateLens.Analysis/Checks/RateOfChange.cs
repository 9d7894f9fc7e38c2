using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Rate-of-change test: a value that lies further from the one before it than its time allows is suspect, or fails.
/// </summary>
/// <remarks>
/// <para><b>Formula:</b> <c>|xᵢ - xᵢ₋₁| / Δt &gt; limit</c>.</para>
/// <para><b>Source:</b> [QARTODTS] test 7; from memory. Held to vectors of an open implementation ([IOOSQC], qartod-vectors.json).</para>
/// </remarks>
public static class RateOfChange
{
    /// <summary>Flags each value: 4 or 3 beyond a limit, 1 within, first of a series and after a gap; 9 for NaN.</summary>
    /// <param name="values">Values on a regular grid. [any unit]</param>
    /// <param name="stepSeconds">Its step. [s]</param>
    /// <param name="suspect">Rate above which a value is suspect; infinite: none. [unit of values/s]</param>
    /// <param name="fail">Rate above which a value fails; infinite: none. [unit of values/s]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void Test(ReadOnlySpan<double> values, double stepSeconds, double suspect, double fail, Span<QualityFlag> flags)
    {
        for (int i = 0; i < values.Length; i++)
        {
            double rate = i == 0 ? double.NaN : Math.Abs(values[i] - values[i - 1]) / stepSeconds;
            flags[i] = double.IsNaN(values[i]) ? QualityFlag.Missing
                : rate > fail ? QualityFlag.Fail
                : rate > suspect ? QualityFlag.Suspect
                : QualityFlag.Pass;
        }
    }
}
