using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>
/// Hours in which leaves may still be wet from a watering over them. Leaves may be taken as dry the drying hours after the end of a
/// watering that ended by its cut-off, else the drying hours after the next sunrise.
/// </summary>
/// <remarks>
/// <para><b>An assumption</b>, common practice, no source: in the dark a film of 0.1 mm takes 6 to 25 h at 80 to 95 % humidity to dry
/// (Penman; docs/science/risk-hours.md), so that an evening's water may well be there in the morning. <b>Error:</b> hours, either way.</para>
/// </remarks>
internal static class WetFromWatering
{
    /// <summary>For each hour of run-in and period, whether leaves may be wet in some of it.</summary>
    public static bool[] Hours(HousePeriod period, HourTable hours)
    {
        bool[] wet = new bool[hours.Count];
        foreach (WateringEvent e in AllWaterings.Of(period.Input).Where(e => CutOff.Wets(e) == true))
        {
            Instant dry = DryFrom(period, e);
            for (int h = Math.Max(0, hours.IndexOf(e.Start)); h < hours.Count && hours.StartOf(h) < dry; h++)
            {
                wet[h] = true;
            }
        }

        return wet;
    }

    /// <summary>When leaves may be taken as dry. Without a sunrise to come (polar night): a day later.</summary>
    private static Instant DryFrom(HousePeriod period, WateringEvent e)
    {
        Duration drying = Duration.FromHours(period.Input.House.Rules.DryingHours);
        Instant finish = e.End ?? e.Start;
        return CutOff.IsAfter(e, CutOff.Of(period, e)) == false
            ? finish + drying
            : (period.Sun.NextSunrise(finish) ?? finish + Duration.FromHours(24)) + drying;
    }
}
