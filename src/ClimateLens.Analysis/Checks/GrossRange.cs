using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Gross range test: a value outside the span in which such values exist fails, outside the span of a working house it is
/// suspect. Limits are inclusive.
/// </summary>
/// <remarks>
/// <para><b>Source:</b> [QARTODTS] test 4; from memory. Held to vectors of an open implementation ([IOOSQC], qartod-vectors.json).</para>
/// </remarks>
public static class GrossRange
{
    /// <summary>Flags each value: 4 outside the fail span, 3 outside the suspect span, 1 within, 9 for NaN.</summary>
    /// <param name="values">Values. [any unit]</param>
    /// <param name="failLow">Lowest possible value. [unit of values]</param>
    /// <param name="failHigh">Highest possible value. [unit of values]</param>
    /// <param name="suspectLow">Lowest usual value. [unit of values]</param>
    /// <param name="suspectHigh">Highest usual value. [unit of values]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void Test(
        ReadOnlySpan<double> values, double failLow, double failHigh, double suspectLow, double suspectHigh, Span<QualityFlag> flags)
    {
        for (int i = 0; i < values.Length; i++)
        {
            double value = values[i];
            flags[i] = double.IsNaN(value) ? QualityFlag.Missing
                : value < failLow || value > failHigh ? QualityFlag.Fail
                : value < suspectLow || value > suspectHigh ? QualityFlag.Suspect
                : QualityFlag.Pass;
        }
    }
}
