using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>The waterings of a house period under a change, which touches those of the period alone. Fog is left as it is: it is there for the air.</summary>
internal static class OtherWaterings
{
    /// <summary>The waterings, in time order.</summary>
    /// <param name="period">The house period.</param>
    /// <param name="cutOffs">Its cut-offs.</param>
    /// <param name="change">What is done otherwise.</param>
    public static ImmutableArray<WateringEvent> Of(HousePeriod period, CutOffs cutOffs, Change change)
    {
        bool moves = change.HasFlag(Change.WaterBeforeCutOff), keepsOff = change.HasFlag(Change.WaterOffLeaves);
        return
        [
            .. period.Events
                .Select(e => IsMeant(period, e) && moves ? Earlier(period, cutOffs, e) : e)
                .Select(e => IsMeant(period, e) && keepsOff ? e with { Method = WateringMethod.Drip } : e)
                .OrderBy(e => e.Start),
        ];
    }

    /// <summary>Whether any watering ended, or began, after its cut-off.</summary>
    public static bool AnyLate(HousePeriod period, CutOffs cutOffs)
        => period.Events.Any(e => IsLate(period, cutOffs, e));

    /// <summary>Whether a watering of the period over the leaves ended, or began, after its cut-off.</summary>
    public static bool IsLate(HousePeriod period, CutOffs cutOffs, WateringEvent e)
        => IsMeant(period, e) && CutOff.IsAfter(e, CutOff.Of(cutOffs, period.Frame.Axis.Zone, e)) == true;

    /// <summary>Whether any watering wetted leaves.</summary>
    public static bool AnyWetting(HousePeriod period) => period.Events.Any(e => IsMeant(period, e));

    /// <summary>Whether a watering of the period itself wets leaves; those before it are as they were.</summary>
    private static bool IsMeant(HousePeriod period, WateringEvent e) => CutOff.Wets(e) == true && e.Method != WateringMethod.Fog && e.Start >= period.Input.Period.Start;

    /// <summary>A late watering finished at the cut-off; begun at sunrise where that is too early or no finish of the day lets leaves dry.</summary>
    private static WateringEvent Earlier(HousePeriod period, CutOffs cutOffs, WateringEvent e)
    {
        DateTimeZone zone = period.Frame.Axis.Zone;
        LocalDate day = e.Start.InZone(zone).Date;
        DayCutOff? cutOff = CutOff.Of(cutOffs, zone, e);
        if (CutOff.IsAfter(e, cutOff) != true || period.Sun.Of(day).Sunrise is not Instant sunrise)
        {
            return e;
        }

        Duration length = e.End is Instant end && end > e.Start ? end - e.Start : Duration.Zero;
        Instant start = cutOff?.Latest is Instant latest ? Instant.Max(sunrise, latest - length) : sunrise;
        return start < e.Start ? e with { Start = start, End = e.End is null ? null : start + length } : e;
    }
}
