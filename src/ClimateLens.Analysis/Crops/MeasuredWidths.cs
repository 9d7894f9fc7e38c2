using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Science.Canopy;
using NodaTime;

namespace ClimateLens.Analysis.Crops;

/// <summary>The plant widths of a crop, a mean a day. What is measured after the period is not looked at: a review is a forecast of its own day.</summary>
internal static class MeasuredWidths
{
    /// <summary>How far one person's width of one plant is from another's: common practice, no source. [cm]</summary>
    public const double OnePlantErrorCm = 1.5;

    private const double NarrowestCm = 0.1, WidestCm = 500;

    /// <summary>Means by day from the start of the crop to the end of the period.</summary>
    /// <param name="input">The house period.</param>
    /// <param name="start">Day 0.</param>
    public static ImmutableArray<PlantWidth> Of(HouseInput input, LocalDate start)
    {
        DateTimeZone zone = input.Nursery.Zone;
        return
        [
            .. input.Records
                .Where(row => row.Kind == RecordKind.PlantWidths && row.At < input.Period.End)
                .Select(row => (Day: Period.DaysBetween(start, row.At.InZone(zone).Date), WidthCm: WidthCm(row)))
                .Where(width => width.Day >= 0 && width.WidthCm is >= NarrowestCm and <= WidestCm)
                .GroupBy(width => width.Day)
                .OrderBy(day => day.Key)
                .Select(day => Mean(day.Key, [.. day.Select(width => width.WidthCm)])),
        ];
    }

    private static PlantWidth Mean(int day, double[] widthsCm)
    {
        double mean = widthsCm.Average();
        double spread = widthsCm.Length < 2 ? 0 : Math.Sqrt(widthsCm.Sum(w => (w - mean) * (w - mean)) / (widthsCm.Length - 1));
        return new(day, mean, Math.Max(spread, OnePlantErrorCm) / Math.Sqrt(widthsCm.Length));
    }

    private static double WidthCm(RecordRow row)
        => row.Fields.TryGetValue("width", out string? text) && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double millimetres)
            ? millimetres / 10
            : double.NaN;
}
