using System.Collections.Immutable;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Canopy;
using NodaTime;
using Step = ClimateLens.Nursery.Settings.SpacingStep;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// How much of the ground the crop covers day by day, and when it closes: a growth curve updated by the measured plant widths, over
/// the spacings of the nursery file. Method, sources and error: docs/science/canopy.md.
/// </summary>
public static class CanopyCover
{
    /// <summary>How far past the period closure is looked for. Choice of this project. [d]</summary>
    public const int DaysAhead = 120;

    /// <summary>Adds cover day by day over run-in and period, and the canopy's state where crop, dates and spacing are given.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        HouseInput input = period.Input;
        DateTimeZone zone = input.Nursery.Zone;
        LocalDate first = period.Frame.Axis.Start.InZone(zone).Date, last = (period.Frame.Axis.End - Duration.Epsilon).InZone(zone).Date;
        LocalDate[] days = [.. Enumerable.Range(0, Days(first, last) + 1).Select(first.PlusDays)];
        if (StandingCrop.Of(input) is not { Spacing.Length: > 0 } crop || GrowthStart.Of(crop) is not { } start)
        {
            return period with { Cover = new CoverCourse(first, [.. days.Select(_ => CoverCourse.Anything)], Known: false) };
        }

        ImmutableArray<PlantWidth> widths = MeasuredWidths.Of(input, start.Date);
        CanopyForecast forecast = new(GrowthFit.Of(start.Prior, widths), [.. crop.Spacing.Select(step => StepOf(step, start.Date))], BiasDraws.Seed);
        ImmutableArray<CanopyDay> covered = [.. days.Select(day => new CanopyDay(day, CoverOn(forecast, Days(start.Date, day))))];
        return period with
        {
            Cover = new CoverCourse(first, [.. covered.Select(day => day.Cover)], Known: true),
            Canopy = StateOf(input, crop, start, widths, forecast, covered),
        };
    }

    private static CanopyState StateOf(HouseInput input, CropSettings crop, GrowthStart start, ImmutableArray<PlantWidth> widths, CanopyForecast forecast, ImmutableArray<CanopyDay> covered)
    {
        LocalDate first = input.Period.Start.InZone(input.Nursery.Zone).Date, end = input.Period.End.InZone(input.Nursery.Zone).Date;
        Step spacing = crop.Spacing.LastOrDefault(step => step.From < end) ?? crop.Spacing[0];
        return new CanopyState(covered[^1].Cover, ClosureOf(forecast, start.Date, spacing.From, LastDay(crop, end)))
        {
            Days = [.. covered.Where(day => day.Date >= first)],
            Widths = [.. widths.Select(width => new CanopyWidth(start.Date.PlusDays((int)width.Day), width.DiameterCm, width.ErrorCm))],
            CountedFrom = start.Date,
            Assumption = start.Assumption,
            Growth = start.Prior.Evidence,
        };
    }

    private static LocalDate LastDay(CropSettings crop, LocalDate end)
        => crop.Sale is LocalDate sale && sale < end.PlusDays(DaysAhead) ? LocalDate.Max(sale, end) : end.PlusDays(DaysAhead);

    private static Estimate CoverOn(CanopyForecast forecast, int day)
    {
        CoverDay cover = forecast.On(day + 0.5); // the middle of the day
        return new Estimate(Math.Round(cover.Cover, 3), Math.Round(cover.Low, 3), Math.Round(cover.High, 3));
    }

    /// <summary>When this spacing closes: before its own first day it stood wider or narrower, which is another closure.</summary>
    private static CanopyClosure? ClosureOf(CanopyForecast forecast, LocalDate start, LocalDate spacedOn, LocalDate last)
    {
        int from = Math.Max(0, Days(start, spacedOn));
        ClosureForecast closure = forecast.Closure(from, Math.Max(from, Days(start, last)));
        LocalDate? On(double day) => double.IsFinite(day) ? start.PlusDays((int)Math.Floor(day)) : null;
        return On(closure.Day) is LocalDate value && On(closure.LowDay) is LocalDate low ? new CanopyClosure(value, low, On(closure.HighDay)) : null;
    }

    private static Science.Canopy.SpacingStep StepOf(Step step, LocalDate start) => new(Days(start, step.From), step.Pattern switch
    {
        "triangular" => PlantSpacing.Triangular(step.DistanceCm),
        "rectangular" => PlantSpacing.Rectangular(step.DistanceCm, step.RowDistanceCm ?? step.DistanceCm),
        _ => PlantSpacing.Square(step.DistanceCm),
    });

    private static int Days(LocalDate from, LocalDate to) => Period.DaysBetween(from, to);
}
