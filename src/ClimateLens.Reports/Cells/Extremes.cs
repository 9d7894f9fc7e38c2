using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.Reports.Cells;

/// <summary>Lowest and highest hour of a column, with their times.</summary>
internal sealed record Extremes(double Low, OffsetDateTime LowAt, double High, OffsetDateTime HighAt, double Mean, int Hours)
{
    /// <summary>Extremes of the hours that have the value; null when none has.</summary>
    public static Extremes? Of(IEnumerable<ReviewHour> hours, Func<ReviewHour, double?> value)
    {
        List<(double Value, OffsetDateTime At)> known =
            [.. hours.Where(h => value(h) is { } v && double.IsFinite(v)).Select(h => (value(h)!.Value, h.Start))];
        if (known.Count == 0)
        {
            return null;
        }

        (double low, OffsetDateTime lowAt) = known.MinBy(k => k.Value);
        (double high, OffsetDateTime highAt) = known.MaxBy(k => k.Value);
        return new Extremes(low, lowAt, high, highAt, known.Average(k => k.Value), known.Count);
    }
}
