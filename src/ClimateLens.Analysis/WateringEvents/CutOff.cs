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

    /// <summary>The cut-off of its local day; null when leaves stay dry or in polar day or night.</summary>
    public static DayCutOff? Of(CutOffs days, DateTimeZone zone, WateringEvent e) => Wets(e) == true ? days.Of(e.Start.InZone(zone).Date) : null;

    /// <summary>
    /// A watering without a known end is late when it began late; otherwise it is not known. On a day of which no finish lets leaves dry every watering is late.
    /// </summary>
    public static bool? IsAfter(WateringEvent e, DayCutOff? cutOff) => cutOff switch
    {
        null => null,
        { Latest: null } => true,
        { Latest: { } latest } => e.End is Instant end ? end > latest : e.Start > latest ? true : null,
    };
}
