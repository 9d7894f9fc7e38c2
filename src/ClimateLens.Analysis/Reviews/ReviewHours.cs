using System.Collections.Immutable;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>
/// The hours of the period as the review shows them. Values are rounded a digit below what any sensor resolves, so that the last
/// bits of a platform's mathematics never show.
/// </summary>
internal static class ReviewHours
{
    public static ImmutableArray<ReviewHour> Of(RiskState risk, double[] shareWet, DateTimeZone zone)
    {
        HourTable hours = risk.Hours;
        ImmutableArray<ReviewHour>.Builder result = ImmutableArray.CreateBuilder<ReviewHour>(hours.Count - hours.FirstOfPeriod);
        for (int h = hours.FirstOfPeriod; h < hours.Count; h++)
        {
            bool known = hours.HasData[h];
            result.Add(new ReviewHour(
                hours.StartOf(h).InZone(zone).ToOffsetDateTime(),
                Rounded(hours.AirTemperatureC[h], 3),
                Rounded(hours.RelativeHumidityPct[h], 3),
                Rounded(hours.DeficitKPa[h], 5),
                Rounded(hours.DewPointC[h], 3),
                Rounded(risk.LeafC[h], 3),
                Rounded(risk.MarginK[h], 3),
                Rounded(hours.AbsoluteHumidityGm3[h], 4),
                double.IsNaN(risk.Wet[h]) ? null : risk.Wet[h] == 1,
                known ? risk.IsRisk(h) : null,
                known ? risk.Probability[h] : null,
                hours.Night[h])
            {
                LeafAirDewPointC = Rounded(risk.DewPointC[h], 3),
                WetOpinionShare = Rounded(shareWet[h], 2),
            });
        }

        return result.MoveToImmutable();
    }

    private static double? Rounded(double value, int decimals) => double.IsNaN(value) ? null : Math.Round(value, decimals);
}
