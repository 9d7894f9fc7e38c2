using System.Collections.Immutable;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Sixth stage: the waterings of the period, each against the cut-off of its day, with the air of the hour before and the hour
/// after its round (<see cref="WateringRound"/>). The rise of humidity is a difference, not an effect: other things change in the same hours.
/// </summary>
public static class Waterings
{
    /// <summary>Finds the waterings; null when nothing would tell of them: no log, no valve, no water meter.</summary>
    public static ImmutableArray<Watering>? Find(HousePeriod period, RiskState risk, CauseState causes)
    {
        HouseInput input = period.Input;
        if (!IsTold(input))
        {
            return null;
        }

        return
        [
            .. WateringRound.Of(period.Events)
                .Where(r => r.Event.Start >= input.Period.Start && r.Event.Start < input.Period.End)
                .Select(r => Judge(period, risk, r.Event, r.Round) with { RiskHoursCaused = Caused(causes, r.Event) }),
        ];
    }

    private static bool IsTold(HouseInput input)
        => input.Records.Any(r => r.Kind == RecordKind.Waterings)
            || ValveWaterings.HasColumns(input)
            || MeteredWaterings.HasColumns(input)
            || input.Nursery.Exports.Any(e => e.Kind == RecordKind.Waterings
                && (e.House == input.House.Id || e.Columns.Any(c => c.Channel == RecordFields.House)));

    private static Watering Judge(HousePeriod period, RiskState risk, WateringEvent e, WateringRound round)
    {
        DateTimeZone zone = period.Input.Nursery.Zone;
        bool? wets = CutOff.Wets(e);
        Instant? sunset = CutOff.Sunset(period, e);
        DayCutOff? cutOff = CutOff.Of(risk.CutOffs, zone, e);
        AirAround? before = AirAround.Of(period, round.Start - Duration.FromHours(1));
        AirAround? after = round.End is Instant end ? AirAround.Of(period, end) : null;
        return new Watering(
            At(e.Start, zone),
            e.End is Instant finish ? At(finish, zone) : null,
            e.Method,
            wets,
            e.Bench,
            e.Litres,
            sunset is Instant dusk ? At(dusk, zone) : null,
            cutOff?.Latest is Instant latest ? At(latest, zone) : null,
            wets == false ? false : CutOff.IsAfter(e, cutOff),
            Rounded(before?.AbsoluteHumidityGm3),
            Rounded(after?.AbsoluteHumidityGm3),
            Rise(before, after, risk.Draws, round.Start),
            Rounded(before?.HumidityPct),
            Rounded(after?.HumidityPct),
            null,
            e.Source)
        {
            CutOffByFilm = cutOff?.ByFilm,
            HoursToSunset = sunset is Instant down && e.End is Instant ended ? Rounded((down - ended).TotalHours) : null,
            DryingLeftMm = wets == true && sunset is Instant dark && e.End is Instant over ? Rounded(risk.Drying?.Mm(over, dark)) : null,
            LeafTemperatureC = wets == true ? Rounded(AtStart(period, e, risk.LeafStepC)) : null,
            SunOverCropWm2 = wets == true ? Rounded(period.Foliage is { } leaves ? AtStart(period, e, leaves.OverCropWm2) : null) : null,
        };
    }

    /// <summary>What the late waterings caused, where the week could be replayed; the others that wet leaves, nothing by their lateness.</summary>
    private static Estimate? Caused(CauseState causes, WateringEvent e)
        => causes.CausedBy is { } caused && CutOff.Wets(e) == true ? caused.GetValueOrDefault(e) : null;

    /// <summary>Greatest value of a column from the step before a watering, when leaves were dry yet, to its end; null where none is known.</summary>
    private static double? AtStart(HousePeriod period, WateringEvent e, double[] column)
    {
        int first = Math.Max(0, period.Frame.Axis.IndexOf(e.Start) - 1), last = period.Frame.Axis.IndexOf(e.End ?? e.Start);
        double most = double.NaN;
        for (int i = first; i <= Math.Min(last, column.Length - 1); i++)
        {
            most = double.IsNaN(most) || column[i] > most ? column[i] : most;
        }

        return double.IsNaN(most) ? null : most;
    }

    private static Estimate? Rise(AirAround? before, AirAround? after, BiasDraws draws, Instant start)
    {
        if (before is not AirAround first || after is not AirAround second)
        {
            return null;
        }

        // Seeded by the round's own start, so that one more round leaves the others as they are.
        SeededRandom random = new(unchecked((ulong)(BiasDraws.Seed ^ start.ToUnixTimeTicks())));
        double[] rises = second.Drawn(draws, random);
        double[] levels = first.Drawn(draws, random);
        for (int d = 0; d < rises.Length; d++)
        {
            rises[d] -= levels[d];
        }

        Estimate rise = Estimates.Of(second.AbsoluteHumidityGm3 - first.AbsoluteHumidityGm3, rises);
        return new Estimate(Math.Round(rise.Value, 3), Math.Round(rise.Low, 3), Math.Round(rise.High, 3));
    }

    private static double? Rounded(double? value) => value is double known ? Math.Round(known, 3) : null;

    private static OffsetDateTime At(Instant instant, DateTimeZone zone) => instant.InZone(zone).ToOffsetDateTime();
}
