using ClimateLens.Analysis.Outlook;
using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// The first night after the period: its risk hours, learned from the nights of the house and shown only where that beats plain guesses, and the latest finish of a watering on its day. Method and error: docs/science/outlook.md.
/// </summary>
public static class Tonight
{
    /// <summary>Looks ahead; null where neither can be told.</summary>
    /// <param name="house">The house period.</param>
    /// <param name="past">The weeks before; null where there are none.</param>
    /// <param name="risk">Its risk hours, with the cut-offs.</param>
    public static OutlookReport? Of(HousePeriod house, HousePeriod? past, RiskState risk)
    {
        DateTimeZone zone = house.Input.Nursery.Zone;
        LocalDate day = house.Input.Period.End.InZone(zone).Date;
        if (house.Sun.Of(day).Sunset is not Instant sunset || house.Sun.Of(day.PlusDays(1)).Sunrise is not Instant sunrise)
        {
            return null;
        }

        NightForecast? night = past is not { HasAir: true } || !house.HasAir || risk.Total is null ? null : Forecast(house, past, zone, day);
        DryingAhead? drying = DryingAhead.Of(risk.CutOffs, house.Sun, day);
        return night is null && drying is null ? null : new OutlookReport(
            At(sunset, zone),
            At(sunrise, zone),
            night is { IsBetter: true } ? new Estimate(Math.Round(night.RiskHours, 1), Math.Round(night.Low, 1), Math.Round(night.High, 1)) : null,
            night is null ? null : new OutlookScore(night.Scored, Rounded(night.Persistence.Skill), Rounded(night.Climatology.Skill), Math.Round(night.MeanMissHours, 2)),
            drying?.Latest is Instant latest ? At(WholeMinute(latest), zone) : null,
            drying?.Earliest is Instant earliest ? At(WholeMinute(earliest), zone) : null,
            drying?.Days ?? 0,
            drying?.MeanMissHours is double miss ? Math.Round(miss, 2) : null);
    }

    /// <summary>The forecast; null where the data end before the period does, so that the night is not the next one.</summary>
    private static NightForecast? Forecast(HousePeriod house, HousePeriod past, DateTimeZone zone, LocalDate day)
    {
        NightTable nights = NightTable.Of(HourlyHouse.Of(past, house), zone, house.Input.Nursery.LatitudeDeg, house.Input.Nursery.LongitudeDeg);
        return nights.Count > 0 && nights.Dates[^1] == day ? NightForecast.Of(nights) : null;
    }

    private static double? Rounded(double value) => double.IsFinite(value) ? Math.Round(value, 2) : null;

    private static Instant WholeMinute(Instant time) => Instant.FromUnixTimeSeconds((long)Math.Floor(time.ToUnixTimeTicks() / (60.0 * NodaConstants.TicksPerSecond)) * 60);

    private static OffsetDateTime At(Instant instant, DateTimeZone zone) => instant.InZone(zone).ToOffsetDateTime();
}
