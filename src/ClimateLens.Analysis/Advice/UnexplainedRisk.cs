using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>
/// Risk hours in a week in which neither late watering nor long humid nights stand beside them. Stretches under four hours, such as those of leaves that dry
/// after a morning watering, give no cause for action: below four hours of wetness the index of Broome et al. 1995 is taken as none.
/// </summary>
internal static class UnexplainedRisk
{
    public const string Id = "riskHours";

    private const int LeastHours = 4;

    public static Candidate? Of(Evidence evidence)
    {
        int risk = evidence.RiskHours;
        if (!Runs(evidence).Any(r => r.End - r.Start >= LeastHours) || LateOverheadWatering.Of(evidence) is not null || LongHumidNights.Of(evidence) is not null)
        {
            return null;
        }

        return new Candidate(
            Id,
            risk,
            Phrase.Of($"{Say.Count(risk, "risk hour")} this week, {Without(evidence)}."),
            Phrase.Of("Look at the hours named below: what was open, shut, wet or cold then?"),
            Phrase.Of("A risk hour says that leaves were near the dew point at a temperature that suits grey mould, not that plants fell ill."),
            [.. Stretches(evidence)]);
    }

    /// <summary>Says no more of nights than the data carry.</summary>
    private static string Without(Evidence evidence)
    {
        int judged = evidence.JudgedNights.Count();
        return judged == evidence.Nights.Length ? Phrase.Of("without late watering over the leaves and without a long humid night beside them")
            : judged == 0 ? Phrase.Of("without late watering over the leaves beside them; no night has enough data to be judged")
            : Phrase.Of($"without late watering over the leaves beside them; none of the {Say.Count(judged, "night")} with enough data had 6 or more humid hours, {evidence.Nights.Length - judged} could not be judged");
    }

    private static IEnumerable<string> Stretches(Evidence evidence) => Runs(evidence).Select(r =>
    {
        Instant from = evidence.Risk.Hours.StartOf(r.Start), to = evidence.Risk.Hours.StartOf(r.End);
        return Phrase.Of($"{Say.Time(from, evidence.Zone)} to {Say.Clock(to, evidence.Zone)}: {Say.Count(r.End - r.Start, "risk hour")}.");
    });

    private static IEnumerable<(int Start, int End)> Runs(Evidence evidence)
    {
        var hours = evidence.Risk.Hours;
        for (int h = hours.FirstOfPeriod; h < hours.Count; h++)
        {
            int end = h;
            while (end < hours.Count && evidence.Risk.IsRisk(end))
            {
                end++;
            }

            if (end > h)
            {
                yield return (h, end);
                h = end;
            }
        }
    }
}
