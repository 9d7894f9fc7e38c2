using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>The hours of one night, from noon of its evening's local date to the next noon.</summary>
/// <param name="Evening">Local date on which it begins.</param>
/// <param name="Length">Night hours, with data or without.</param>
/// <param name="Hours">Night hours with data.</param>
/// <param name="Humid">Of these, hours at or above the humidity limit or with the leaf near the dew point.</param>
/// <param name="Risk">Of these, risk hours that lie in the period.</param>
/// <param name="HighestPct">Highest hourly humidity. [%]</param>
internal sealed record NightHours(LocalDate Evening, int Length, int Hours, int Humid, int Risk, double HighestPct)
{
    /// <summary>
    /// Humidity from which on a night hour counts as humid. [%] Source: Michigan State University Extension advice on grey mould
    /// in greenhouses (M. Hausbeck): keep humidity under 85 %, and plants wet for less than 6 of 24 hours.
    /// </summary>
    public const double HumidPct = 85;

    /// <summary>Whether at least half of the night's hours have data; else it is not judged. Choice of this project, no source.</summary>
    public bool IsJudged => Hours > 0 && 2 * Hours >= Length;

    /// <summary>
    /// Nights whose morning falls in the period, in time order: seven in a week from Monday to Sunday, from the one to Monday on.
    /// The evening before the period comes from the run-in, where that is loaded.
    /// </summary>
    public static ImmutableArray<NightHours> Of(HousePeriod period, RiskState risk)
    {
        DateTimeZone zone = period.Frame.Axis.Zone;
        LocalDate first = period.Input.Period.Start.InZone(zone).Date, end = period.Input.Period.End.InZone(zone).Date;
        ImmutableArray<NightHours>.Builder nights = ImmutableArray.CreateBuilder<NightHours>();
        for (LocalDate morning = first; morning < end; morning = morning.PlusDays(1))
        {
            NightHours night = OfEvening(period, risk, morning.PlusDays(-1));
            if (night.Length > 0)
            {
                nights.Add(night);
            }
        }

        return nights.ToImmutable();
    }

    /// <summary>The night that begins on a local date, as far as data are loaded.</summary>
    public static NightHours OfEvening(HousePeriod period, RiskState risk, LocalDate evening)
    {
        HourTable hours = risk.Hours;
        DateTimeZone zone = period.Frame.Axis.Zone;
        double marginK = period.Input.House.Rules.MarginK;
        int first = (int)Math.Floor((evening.At(LocalTime.Noon).InZoneLeniently(zone).ToInstant() - hours.Start).TotalHours) - 1;
        NightHours night = new(evening, 0, 0, 0, 0, 0);
        for (int h = first; h <= first + 27; h++)
        {
            Instant middle = hours.StartOf(h) + Duration.FromMinutes(30);
            if (EveningOf(middle, zone) != evening || !period.Sun.IsNight(middle))
            {
                continue;
            }

            night = night with { Length = night.Length + 1 };
            if (h >= 0 && h < hours.Count && hours.HasData[h])
            {
                bool humid = hours.RelativeHumidityPct[h] >= HumidPct || risk.MarginK[h] < marginK;
                bool counts = h >= hours.FirstOfPeriod && risk.IsRisk(h);
                night = night with
                {
                    Hours = night.Hours + 1,
                    Humid = night.Humid + (humid ? 1 : 0),
                    Risk = night.Risk + (counts ? 1 : 0),
                    HighestPct = Math.Max(night.HighestPct, hours.RelativeHumidityPct[h]),
                };
            }
        }

        return night;
    }

    /// <summary>A night belongs to the local date half a day before its hours: the evening's own until noon of the next day.</summary>
    private static LocalDate EveningOf(Instant instant, DateTimeZone zone) => (instant - Duration.FromHours(12)).InZone(zone).Date;
}
