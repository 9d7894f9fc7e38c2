using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.WateringEvents;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>Counts of the seven local days before a period, out of its run-in, for comparison.</summary>
internal static class BeforeThis
{
    /// <summary>The counts; null where those days are not loaded whole or have no readings.</summary>
    public static WeekBefore? Of(HousePeriod period, RiskState risk)
    {
        DateTimeZone zone = period.Frame.Axis.Zone;
        Instant from = zone.AtStartOfDay(period.Input.Period.Start.InZone(zone).Date.PlusDays(-7)).ToInstant();
        int first = risk.Hours.IndexOf(from), known = first < 0 ? 0 : risk.Hours.HasData[first..risk.Hours.FirstOfPeriod].Count(h => h);
        if (known == 0)
        {
            return null;
        }

        WateringEvent[] events = [.. WateringRound.Of(period.Events).Select(r => r.Event).Where(e => e.Start >= from && e.Start < period.Input.Period.Start)];
        WateringEvent[] wetting = [.. events.Where(e => CutOff.Wets(e) == true)];
        bool told = events.Length > 0;
        return new WeekBefore(known, told ? wetting.Length : null, told ? wetting.Count(e => CutOff.IsAfter(e, CutOff.Of(risk.CutOffs, zone, e)) == true) : null);
    }
}
