using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>One flag out of several tests: fail before suspect before pass before not evaluated before missing.</summary>
/// <remarks><para><b>Source:</b> order of the QARTOD flags as in [IOOSQC] (qartod-vectors.json).</para></remarks>
public static class FlagRollUp
{
    /// <summary>The weightier of two flags.</summary>
    public static QualityFlag Of(QualityFlag first, QualityFlag second) => Weight(first) >= Weight(second) ? first : second;

    /// <summary>Rolls a test's flags into those gathered so far.</summary>
    /// <param name="gathered">Flags so far; receives the result.</param>
    /// <param name="test">Flags of one more test; empty when it did not run.</param>
    public static void Into(Span<QualityFlag> gathered, ReadOnlySpan<QualityFlag> test)
    {
        for (int i = 0; i < test.Length; i++)
        {
            gathered[i] = Of(gathered[i], test[i]);
        }
    }

    private static int Weight(QualityFlag flag) => flag switch
    {
        QualityFlag.Fail => 4,
        QualityFlag.Suspect => 3,
        QualityFlag.Pass => 2,
        QualityFlag.NotEvaluated => 1,
        _ => 0,
    };
}
