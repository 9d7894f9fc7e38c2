using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Moisture;

/// <summary>A logged VPD or dew point against ours from temperature and relative humidity: this is how a wrong unit is found.</summary>
/// <param name="Logged">The logged series.</param>
/// <param name="Steps">Steps compared.</param>
/// <param name="Mean">Mean of ours less logged. [SI unit of the channel]</param>
/// <param name="Largest">Largest absolute difference. [SI unit of the channel]</param>
/// <param name="Tolerance">Mean difference above which the two disagree. [SI unit of the channel]</param>
internal sealed record LoggedComparison(Series Logged, int Steps, double Mean, double Largest, double Tolerance)
{
    /// <summary>Mean differences that two honest ways of working out the same thing do not reach. Common practice, no source.</summary>
    private static readonly (string Channel, ColumnKey Ours, double Tolerance)[] Pairs =
    [
        ("vapourPressureDeficit", Derived.DeficitKPa, 0.1),
        ("dewPoint", Derived.DewPointC, 1),
    ];

    /// <summary>Whether ours and theirs cannot both be right.</summary>
    public bool Disagrees => Math.Abs(Mean) > Tolerance;

    /// <summary>All comparisons that the period allows.</summary>
    public static IEnumerable<LoggedComparison> All(HousePeriod period)
    {
        foreach ((string channel, ColumnKey ours, double tolerance) in Pairs)
        {
            foreach (Series series in period.Series)
            {
                bool comparable = series.Channel.Name == channel && period.Humidity is not null && series.House == period.Humidity.House;
                if (comparable && Compare(period, series, ours, tolerance) is LoggedComparison comparison)
                {
                    yield return comparison;
                }
            }
        }
    }

    /// <summary>Adds a note on every comparison to the logged series.</summary>
    public static HousePeriod AddNotes(HousePeriod period)
    {
        SensorNotes notes = period.Notes;
        foreach (LoggedComparison comparison in All(period))
        {
            notes = notes.With(comparison.Logged.Key, comparison.Sentence());
        }

        return period with { Notes = notes };
    }

    /// <summary>The comparison as a sentence.</summary>
    public string Sentence()
    {
        string unit = Units.Difference(Logged.Channel.Quantity);
        string verdict = Disagrees
            ? Phrase.Of(" That is more than rounding: check the unit of this column, and that both come from the same sensor.")
            : "";
        return Phrase.Of($"Ours from temperature and relative humidity less the logged value: {Say.Number(Mean, 3)}{unit} on average, {Say.Number(Largest, 3)}{unit} at most, over {Say.Count(Steps, "step")}.{verdict}");
    }

    private static LoggedComparison? Compare(HousePeriod period, Series series, ColumnKey oursKey, double tolerance)
    {
        IReadOnlyList<double> logged = Comparable(period, series);
        ImmutableArray<double> ours = period.Frame.Values(oursKey);
        int steps = 0;
        double sum = 0, largest = 0;
        for (int i = period.FirstStep; i < logged.Count; i++)
        {
            double difference = ours[i] - logged[i];
            if (double.IsFinite(difference))
            {
                steps++;
                sum += difference;
                largest = Math.Max(largest, Math.Abs(difference));
            }
        }

        return steps == 0 ? null : new LoggedComparison(series, steps, sum / steps, largest, tolerance);
    }

    /// <summary>
    /// Failed values are left out, so that a few of them do not speak for the rest; but where most failed, the unit itself is in
    /// question, and all are compared.
    /// </summary>
    private static IReadOnlyList<double> Comparable(HousePeriod period, Series series)
    {
        ReadOnlySpan<QualityFlag> flags = period.Frame.Flags(series.Key).AsSpan()[period.FirstStep..];
        int failed = flags.Count(QualityFlag.Fail), there = flags.Length - flags.Count(QualityFlag.Missing);
        return 2 * failed > there ? period.Frame.Values(series.Key) : Quality.Used(period.Frame, series.Key);
    }
}
