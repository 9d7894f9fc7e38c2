using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Reviews;

/// <summary>Each series with its flags over the period and what is to be said of it.</summary>
internal static class SensorReports
{
    public static ImmutableArray<SensorReport> Of(HousePeriod period)
        => [.. period.Series.Select(s => new SensorReport(s.Source, s.Channel.Name, s.Sensor, Count(period, s), Notes(period, s)) { Flagged = FlaggedStretches.Of(period, s) })];

    private static FlagCounts Count(HousePeriod period, Series series)
    {
        ReadOnlySpan<QualityFlag> flags = period.Frame.Flags(series.Key).AsSpan()[period.FirstStep..];
        return new FlagCounts(
            flags.Count(QualityFlag.Pass),
            flags.Count(QualityFlag.NotEvaluated),
            flags.Count(QualityFlag.Suspect),
            flags.Count(QualityFlag.Fail),
            flags.Count(QualityFlag.Missing));
    }

    private static ImmutableArray<string> Notes(HousePeriod period, Series series)
    {
        ImmutableArray<string> notes = period.Notes.Of(series.Key);
        return Accuracy(period, series) is (SensorAccuracy accuracy, string unit)
            ? notes.Add(Phrase.Of($"Accuracy ±{Say.Number(accuracy.HalfWidth)}{unit} ({accuracy.Source})."))
            : notes;
    }

    /// <summary>The accuracy that the draws used for this series; null for those that take no part in them.</summary>
    private static (SensorAccuracy Accuracy, string Unit)? Accuracy(HousePeriod period, Series series)
        => JoinedSources.IsBehind(series, period.Temperature) ? (BiasDraws.AirTemperature(period), " K")
            : JoinedSources.IsBehind(series, period.Humidity ?? period.HumidityFrom) ? (BiasDraws.Humidity(period), Phrase.Of(" % relative humidity"))
            : JoinedSources.IsBehind(series, period.Leaf) ? (BiasDraws.Leaf(period), " K")
            : null;
}
