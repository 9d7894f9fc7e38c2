using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>Plants that all but stopped growing against their own curve so far.</summary>
/// <remarks>
/// <b>Rule:</b> mean width or height of the plants measured on each day; the last step, at least five days long and into the period, grew by less than a quarter of the rate of the two steps before
/// it, and by at least two standard errors less than half of that rate. Plants slow down towards their full size, so half the rate is taken as still on the curve. Choices of this project.
/// </remarks>
internal static class Growth
{
    private const int FewestDays = 4, ShortestStepDays = 5, FewestPlants = 3;
    private const double Stalled = 0.25, OnTheCurve = 0.5, Errors = 2;

    /// <summary>The stalls of the period; empty where plants grow on or too few were measured.</summary>
    public static ImmutableArray<GrowthStall> Of(HouseInput input)
        => [.. ((string[])["width", "height"]).Select(measure => Stall(input, measure)).OfType<GrowthStall>()];

    private static GrowthStall? Stall(HouseInput input, string measure)
    {
        (LocalDate Date, double Mean, double Error)[] days = [.. Days(input, measure)];
        if (days.Length < FewestDays || days[^1].Date < input.Period.Start.InZone(input.Nursery.Zone).Date)
        {
            return null;
        }

        (LocalDate first, double firstMean, _) = days[^4];
        (LocalDate before, double beforeMean, double beforeError) = days[^2];
        (LocalDate last, double lastMean, double lastError) = days[^1];
        int length = Period.DaysBetween(before, last);
        double usual = (beforeMean - firstMean) / Period.DaysBetween(first, before) * length, grew = lastMean - beforeMean;
        double error = Math.Sqrt((beforeError * beforeError) + (lastError * lastError));
        return length >= ShortestStepDays && usual > 0 && grew < Stalled * usual && (OnTheCurve * usual) - grew >= Errors * error
            ? new(measure, before, last, grew, usual)
            : null;
    }

    private static IEnumerable<(LocalDate, double, double)> Days(HouseInput input, string measure)
    {
        LocalDate start = Treatments.SeasonStart(input);
        return input.Records
            .Where(r => r.Kind == RecordKind.PlantWidths && r.At < input.Period.End && r.Number(measure) > 0)
            .GroupBy(r => r.At.InZone(input.Nursery.Zone).Date, r => r.Number(measure)!.Value / 10)
            .Where(day => day.Key >= start && day.Count() >= FewestPlants)
            .OrderBy(day => day.Key)
            .Select(day => (day.Key, day.Average(), ErrorOf([.. day])));
    }

    private static double ErrorOf(double[] values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1) / values.Length);
    }
}
