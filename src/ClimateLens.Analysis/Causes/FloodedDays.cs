using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Science.Matching;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>Floods of benches and floors on dull and on bright days, each against alike hours without one.</summary>
/// <remarks>
/// A day is dull with less sun over the crop than <c>dullDayMJm2</c> of the nursery file; 2 MJ/m² when it does not say, about a bright hour and a half of summer (choice of this project, no source).
/// </remarks>
internal static class FloodedDays
{
    /// <summary>A day of which the sun is known for less than this is not called dull or bright. Choice of this project. [1]</summary>
    private const double FewestShare = 0.8;

    /// <summary>Whether a house period has any flood.</summary>
    public static bool Any(HousePeriod house) => house.Events.Any(e => e.IsFlood && e.Start >= house.Input.Period.Start);

    /// <summary>What floods did.</summary>
    /// <param name="house">The period.</param>
    /// <param name="hours">It and the weeks before.</param>
    public static FloodReport Of(HousePeriod house, AlikeHours hours)
    {
        double limit = house.Input.House.Rules.DullDayMJm2;
        WateringEvent[] floods = [.. hours.Events.Where(e => e.IsFlood)];
        Dictionary<LocalDate, double?> sun = DaySun(hours);
        bool? IsDull(WateringEvent e) => Sun(e) is double mj ? mj < limit : null;
        double? Sun(WateringEvent e) => sun.GetValueOrDefault(e.Start.InZone(hours.Axis.Zone).Date);
        return new FloodReport(
            limit,
            [
                .. floods.Where(e => e.Start >= house.Input.Period.Start).Select(e => new Flood(
                    e.Start.InZone(hours.Axis.Zone).ToOffsetDateTime(), e.Bench, Sun(e) is double mj ? Math.Round(mj, 2) : null, IsDull(e))),
            ],
            Effect(hours, floods.Where(e => IsDull(e) == true)),
            Effect(hours, floods.Where(e => IsDull(e) == false)));
    }

    private static FloodEffect Effect(AlikeHours hours, IEnumerable<WateringEvent> floods)
    {
        MatchedEffect effect = hours.EffectOf(floods);
        return new FloodEffect(effect.Events.Count, effect.Matched, effect.Matched == 0 ? null : CauseReports.Of(effect.Effect), CauseReports.Rounded(effect.Placebo.RejectionRate));
    }

    /// <summary>Sun over the crop of each local day. [MJ/m²]</summary>
    private static Dictionary<LocalDate, double?> DaySun(AlikeHours hours)
    {
        ReadOnlyMemory<double> sun = hours.All.SunWm2;
        return sun.IsEmpty ? [] : Enumerable.Range(0, hours.Axis.Count).GroupBy(i => hours.Axis.StartOf(i).InZone(hours.Axis.Zone).Date).ToDictionary(day => day.Key, day =>
        {
            double[] known = [.. day.Select(i => sun.Span[i]).Where(double.IsFinite)];
            double hoursKnown = known.Length * hours.All.StepHours;
            return hoursKnown >= FewestShare * 24 ? known.Average() * 24 * 3600 / 1e6 : (double?)null;
        });
    }
}
