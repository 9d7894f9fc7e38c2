using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Whether the readings that the risk rests on carry a total: not when more than half of the used ones are doubtful. Choice of this
/// project, no source.
/// </summary>
internal static class Trust
{
    /// <summary>The main series of which more than half of the used steps in [from, to) are suspect, or null.</summary>
    public static Series? MostlyDoubtful(HousePeriod period, int from, int to)
    {
        foreach (Series main in ((Series?[])[period.Temperature, period.Humidity ?? period.HumidityFrom]).OfType<Series>())
        {
            ReadOnlySpan<QualityFlag> flags = period.Frame.Flags(main.Key).AsSpan()[Math.Max(0, from)..to];
            int suspect = flags.Count(QualityFlag.Suspect) - OnlyByAnother(period, main, Math.Max(0, from), to);
            int used = flags.Count(QualityFlag.Suspect) + flags.Count(QualityFlag.Pass) + flags.Count(QualityFlag.NotEvaluated);
            if (2 * suspect > used)
            {
                return main;
            }
        }

        return null;
    }

    /// <summary>
    /// Steps in doubt for nothing but another sensor that says otherwise. They do not take the total away: which of the two is wrong is not
    /// known, and sensors far apart may both be right.
    /// </summary>
    private static int OnlyByAnother(HousePeriod period, Series main, int from, int to)
        => period.Checks.TryGetValue(main.Key, out SeriesFlags? checks)
            ? Enumerable.Range(from, to - from).Count(i => checks.RolledUp[i] == QualityFlag.Suspect && !checks.FoundBut(QualityCheck.SensorPair, i))
            : 0;
}
