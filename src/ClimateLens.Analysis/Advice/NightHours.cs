using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>The hours of one night of the period, by the local date of its evening.</summary>
/// <param name="Evening">Local date on which it begins; the evening before for a night that the period starts in.</param>
/// <param name="Hours">Night hours with data.</param>
/// <param name="Humid">Of these, hours at or above the humidity limit or with the leaf near the dew point.</param>
/// <param name="Risk">Of these, risk hours.</param>
/// <param name="HighestPct">Highest hourly humidity. [%]</param>
internal sealed record NightHours(LocalDate Evening, int Hours, int Humid, int Risk, double HighestPct)
{
    /// <summary>
    /// Humidity from which on a night hour counts as humid. [%] Source: Michigan State University Extension advice on grey mould
    /// in greenhouses (M. Hausbeck): keep humidity under 85 %, and plants wet for less than 6 of 24 hours.
    /// </summary>
    public const double HumidPct = 85;

    /// <summary>Nights of the period in time order. A night that the period cuts counts with the hours inside.</summary>
    public static ImmutableArray<NightHours> Of(HousePeriod period, RiskState risk)
    {
        HourTable hours = risk.Hours;
        double marginK = period.Input.House.Rules.MarginK;
        List<NightHours> nights = [];
        for (int h = hours.FirstOfPeriod; h < hours.Count; h++)
        {
            if (!hours.Night[h] || !hours.HasData[h])
            {
                continue;
            }

            LocalDate evening = EveningOf(period, hours.StartOf(h) + Duration.FromMinutes(30));
            if (nights.Count == 0 || nights[^1].Evening != evening)
            {
                nights.Add(new NightHours(evening, 0, 0, 0, 0));
            }

            NightHours night = nights[^1];
            bool humid = hours.RelativeHumidityPct[h] >= HumidPct || risk.MarginK[h] < marginK;
            nights[^1] = new NightHours(
                evening,
                night.Hours + 1,
                night.Humid + (humid ? 1 : 0),
                night.Risk + (risk.IsRisk(h) ? 1 : 0),
                Math.Max(night.HighestPct, hours.RelativeHumidityPct[h]));
        }

        return [.. nights];
    }

    /// <summary>A night belongs to the local date half a day before its hours: the evening's own until noon of the next day.</summary>
    private static LocalDate EveningOf(HousePeriod period, Instant instant)
        => (instant - Duration.FromHours(12)).InZone(period.Frame.Axis.Zone).Date;
}
