using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>The latest finish of a watering that still lets leaves dry before sunset, and which side of it a watering ended on.</summary>
internal static class CutOff
{
    /// <summary>Whether a watering wets leaves; null with its method.</summary>
    public static bool? Wets(WateringEvent e) => e.Method is WateringMethod method ? LeafWetting.By(method) : null;

    /// <summary>Sunset of the watering's local day, or null in polar day or night.</summary>
    public static Instant? Sunset(HousePeriod period, WateringEvent e)
        => period.Sun.Of(e.Start.InZone(period.Input.Nursery.Zone).Date).Sunset;

    /// <summary>That sunset less the drying hours; null when leaves stay dry.</summary>
    public static Instant? Of(HousePeriod period, WateringEvent e)
        => Wets(e) == true && Sunset(period, e) is Instant s ? s - Duration.FromHours(period.Input.House.Rules.DryingHours) : null;

    /// <summary>A watering without a known end is late when it began late; otherwise it is not known.</summary>
    public static bool? IsAfter(WateringEvent e, Instant? cutOff)
        => cutOff is null ? null
            : e.End is Instant end ? end > cutOff
            : e.Start > cutOff ? true
            : null;
}
