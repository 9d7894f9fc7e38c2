using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.Learned;

/// <summary>Puts what was found of each sensor into the records of a review.</summary>
internal static class LearnedReports
{
    /// <summary>The reports, in the order of the fits.</summary>
    public static ImmutableArray<LearnedSensorReport> Of(SensorTable week, SensorFit[] fits, WeekErrors errors, List<FoundShift> shifts, bool[][] suspect)
        => [.. Enumerable.Range(0, fits.Length).Select(f => Report(week, fits[f], errors.Of(f), shifts.Find(s => s.Fit == f), suspect[f]))];

    private static LearnedSensorReport Report(SensorTable week, SensorFit fit, double[] errors, FoundShift? shift, bool[] suspect)
    {
        LearnedSensor sensor = week.Sensors[fit.Target];
        return new LearnedSensorReport(
            sensor.Channel.Name,
            sensor.Sensor,
            fit.Days,
            fit.UsesTrees ? "linearAndTrees" : "linear",
            Math.Round(fit.Usual.Of95, 3),
            Math.Round(fit.Usual.StepLimit, 3),
            errors.Count(double.IsFinite),
            suspect.Count(s => s),
            Stretches(week, week.Columns[fit.Target], errors, suspect),
            shift is null ? null : Shift(week, fit, shift));
    }

    private static ImmutableArray<SuspectStretch> Stretches(SensorTable week, double[] logged, double[] errors, bool[] suspect)
    {
        ImmutableArray<SuspectStretch>.Builder stretches = ImmutableArray.CreateBuilder<SuspectStretch>();
        for (int first = 0; first < suspect.Length; first++)
        {
            int end = first;
            while (end < suspect.Length && suspect[end])
            {
                end++;
            }

            if (end > first)
            {
                double mean = logged[first..end].Average();
                stretches.Add(new SuspectStretch(At(week, week.Axis.StartOf(first)), At(week, week.Axis.StartOf(end)), end - first, Math.Round(mean, 3), Math.Round(mean - errors[first..end].Average(), 3)));
            }

            first = end;
        }

        return stretches.ToImmutable();
    }

    private static LastingShift Shift(SensorTable week, SensorFit fit, FoundShift shift)
    {
        DayError usual = fit.Usual.Parts[(int)shift.Part];
        double size = Quantiles.Of([.. shift.Sizes.Order()], 0.5);
        Instant StartOf(int day) => week.Axis.Zone.AtStartOfDay(SensorTable.DateOf(day)).ToInstant();
        return new LastingShift(
            At(week, Instant.Max(week.Axis.Start, StartOf(shift.FirstDay))),
            At(week, Instant.Min(week.Axis.End, StartOf(shift.LastDay + 1))),
            shift.Sizes.Length,
            JsonNamingPolicy.CamelCase.ConvertName(shift.Part.ToString()),
            new Estimate(Math.Round(size, 2), Math.Round(size - (usual.High - usual.Middle), 2), Math.Round(size + (usual.Middle - usual.Low), 2)),
            Math.Round(shift.Sizes[0], 2),
            Math.Round(shift.Sizes[^1], 2));
    }

    private static OffsetDateTime At(SensorTable week, Instant instant) => instant.InZone(week.Axis.Zone).ToOffsetDateTime();
}
