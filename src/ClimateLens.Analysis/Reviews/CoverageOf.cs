using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>How much of the period has both air temperature and humidity, where the gaps are, and why.</summary>
internal static class CoverageOf
{
    /// <summary>A shorter stretch is no gap worth naming. [steps]</summary>
    private const int FewestSteps = 3;

    private const string NoReadings = "noReadings", MissingValue = "missingValue", FailedCheck = "failedCheck";

    public static Coverage Period(HousePeriod period, HourTable hours)
        => new(
            hours.Count - hours.FirstOfPeriod,
            hours.HasData.AsSpan(hours.FirstOfPeriod).Count(true),
            [.. Gaps(period)]);

    private static IEnumerable<Gap> Gaps(HousePeriod period)
    {
        ImmutableArray<double> usable = period.Frame.Values(Derived.VapourPressureKPa);
        int count = usable.Length;
        for (int first = period.FirstStep; first < count; first++)
        {
            int end = first;
            while (end < count && double.IsNaN(usable[end]))
            {
                end++;
            }

            if (end - first >= FewestSteps)
            {
                yield return GapOf(period, first, end);
            }

            first = end;
        }
    }

    private static Gap GapOf(HousePeriod period, int first, int end)
    {
        TimeAxis axis = period.Frame.Axis;
        Instant start = axis.StartOf(first);
        Instant stop = Instant.Min(axis.StartOf(end), period.Input.Period.End);
        string why = Enumerable.Range(first, end - first)
            .GroupBy(step => WhyAt(period, step), StringComparer.Ordinal)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => g.First())
            .First().Key;
        return new Gap(
            start.InZone(axis.Zone).ToOffsetDateTime(),
            stop.InZone(axis.Zone).ToOffsetDateTime(),
            Math.Round((stop - start).TotalHours, 2),
            why);
    }

    private static string WhyAt(HousePeriod period, int step)
    {
        Series?[] needed = [period.Temperature, period.Humidity ?? period.HumidityFrom];
        bool failed = needed.Any(s => s is not null && period.Frame.Flags(s.Key)[step] == QualityFlag.Fail);
        return failed ? FailedCheck
            : period.RowSeen[step] ? MissingValue
            : NoReadings;
    }
}
