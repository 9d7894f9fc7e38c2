using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Flat-line test: a value is suspect, or fails, when all values of the time before it have stayed within a tolerance.
/// On a regular grid whose gaps are NaN a count of steps is elapsed time.
/// </summary>
/// <remarks>
/// <para><b>Source:</b> [QARTODTS] test 8; from memory. Beyond it, at least half of the
/// window must hold values, so that two equal readings either side of a gap prove nothing.</para>
/// </remarks>
public static class FlatLine
{
    /// <summary>Flags each value: 4 or 3 after an unchanged time, else 1; 9 for NaN.</summary>
    /// <param name="values">Values on a regular grid. [any unit]</param>
    /// <param name="suspectSteps">Unchanged steps before a value is suspect, 1 or more.</param>
    /// <param name="failSteps">Unchanged steps before a value fails, 1 or more.</param>
    /// <param name="tolerance">The range of the window stays below this. [unit of values]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void Test(ReadOnlySpan<double> values, int suspectSteps, int failSteps, double tolerance, Span<QualityFlag> flags)
    {
        for (int i = 0; i < values.Length; i++)
        {
            flags[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : QualityFlag.Pass;
        }

        Mark(values, suspectSteps, tolerance, QualityFlag.Suspect, flags);
        Mark(values, failSteps, tolerance, QualityFlag.Fail, flags);
    }

    /// <summary>
    /// Carries a flag back over the window that earned it: looking back over a whole week, the hours before the test could
    /// know are as stuck as those after.
    /// </summary>
    /// <param name="flags">Flags of <see cref="Test"/>.</param>
    /// <param name="suspectSteps">As tested.</param>
    /// <param name="failSteps">As tested.</param>
    public static void CarryBack(Span<QualityFlag> flags, int suspectSteps, int failSteps)
    {
        int suspectFrom = int.MaxValue, failFrom = int.MaxValue;
        for (int i = flags.Length - 1; i >= 0; i--)
        {
            QualityFlag tested = flags[i];
            if (tested == QualityFlag.Fail)
            {
                failFrom = Math.Min(failFrom, i - failSteps);
            }
            else if (tested == QualityFlag.Suspect)
            {
                suspectFrom = Math.Min(suspectFrom, i - suspectSteps);
            }

            if (tested != QualityFlag.Missing)
            {
                bool fail = failFrom != int.MaxValue && i >= failFrom;
                bool suspect = suspectFrom != int.MaxValue && i >= suspectFrom;
                flags[i] = fail ? QualityFlag.Fail : suspect ? QualityFlag.Suspect : tested;
            }
        }
    }

    private static void Mark(ReadOnlySpan<double> values, int steps, double tolerance, QualityFlag flag, Span<QualityFlag> flags)
    {
        if (steps < 1 || values.Length < 3)
        {
            return;
        }

        SlidingRange range = new(steps + 1);
        for (int i = 0; i < values.Length; i++)
        {
            range.Push(values[i]);
            if (i >= steps && !double.IsNaN(values[i]) && 2 * range.Present >= steps + 1 && range.Range < tolerance)
            {
                flags[i] = flag;
            }
        }
    }
}
