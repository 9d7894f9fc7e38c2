using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.Scouting;

/// <summary>Holds the plants found affected against the risk hours of the weeks before they were counted.</summary>
/// <remarks>
/// <para><b>Method:</b> a count is paired with the risk hours of the whole week before its own, since it cannot come of weather after it; Spearman's rank correlation
/// (<see cref="RankCorrelation"/>) over these pairs. Only this one lag is tried: how long a spot takes to show is not known here, and the best of many lags would look good by chance.</para>
/// <para><b>What it is not:</b> a proof. Weeks of one crop follow from each other, so that the range is too narrow; crop, cleaning and the eye of who counts change with the weeks as well.</para>
/// </remarks>
internal static class ScoutingOf
{
    /// <summary>Fewer pairs carry no correlation. Choice of this project: with six, the range of a correlation of 0 is still -0.74 to 0.74.</summary>
    public const int FewestPairs = 6;

    private const double Level = 0.9;

    /// <summary>The report; null where nothing was counted in the weeks that are looked at.</summary>
    /// <param name="period">The house period.</param>
    /// <param name="risk">Its own risk hours.</param>
    public static ScoutingReport? Of(HousePeriod period, RiskState risk)
    {
        HouseInput input = period.Input;
        DateTimeZone zone = input.Nursery.Zone;
        SortedDictionary<IsoWeek, int?> hours = [];
        foreach (HouseInput week in input.Earlier.Where(w => StandsIn(input, w)))
        {
            hours[WeekOf(week, zone)] = WeekRisk.Of(week);
        }

        IsoWeek own = WeekOf(input, zone);
        if (own.In(zone) == input.Period)
        {
            hours[own] = (int?)risk.Total?.Value;
        }

        var counts = WeekCounts.Of(input.Records.Where(row => row.At < input.Period.End), zone);
        ScoutedSymptom[] symptoms = [.. counts.Where(symptom => symptom.Value.Keys.Any(hours.ContainsKey)).Select(symptom => SymptomOf(symptom.Key, symptom.Value, hours))];
        return symptoms.Length == 0 ? null : new([.. hours.Select(w => new ScoutedWeek(w.Key.ToString(), w.Value))], [.. symptoms]);
    }

    private static ScoutedSymptom SymptomOf(string symptom, SortedDictionary<IsoWeek, double> counts, SortedDictionary<IsoWeek, int?> risk)
    {
        double[] plants = [.. risk.Keys.Select(week => counts.GetValueOrDefault(week, double.NaN))];
        double[] before = [.. risk.Keys.Select(week => risk.GetValueOrDefault(ScoutedWeeks.BeforeThat(week)) is int hours ? hours : double.NaN)];
        RankCorrelation ranks = RankCorrelation.Of(before, plants, Level, unchecked((ulong)BiasDraws.Seed));
        bool told = ranks.Pairs >= FewestPairs && double.IsFinite(ranks.Rho.Value);
        return new(
            symptom,
            [.. plants.Select(p => double.IsNaN(p) ? (double?)null : p)],
            ranks.Pairs,
            told ? new(Math.Round(ranks.Rho.Value, 3), Math.Round(ranks.Rho.Low, 3), Math.Round(ranks.Rho.High, 3)) : null,
            told ? ranks.ChanceShare : null);
    }

    /// <summary>Whether a week belongs to the crop that stands in the period; every week does where no crop is named.</summary>
    private static bool StandsIn(HouseInput input, HouseInput week)
        => Crops.StandingCrop.Of(input) is not { } crop || (crop.Potted ?? crop.Pinched) is not LocalDate start || week.Period.End.InZone(input.Nursery.Zone).Date > start;

    private static IsoWeek WeekOf(HouseInput input, DateTimeZone zone) => IsoWeek.Of(input.Period.Start.InZone(zone).Date);
}
