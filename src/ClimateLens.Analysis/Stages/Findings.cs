using System.Collections.Immutable;
using ClimateLens.Analysis.Advice;
using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// What a grower should know and do, the most hours at stake first: those that a change would have avoided where that is known. Each finding is a rule of its own in
/// Advice/, with its evidence; a week in which none fires gets a calm one.
/// </summary>
public static class Findings
{
    /// <summary>All rules; for equal hours at stake the earlier one comes first.</summary>
    private static readonly Func<Evidence, Candidate?>[] Rules =
    [
        ClockWrong.Of,
        InsideReentry.Of,
        FloorRemembers.Of,
        DryPots.Of,
        RootWeatherSeen.Of,
        LateOverheadWatering.Of,
        KeepWaterOffLeaves.Of,
        SpaceWider.Of,
        HeatAndVentEarly.Of,
        FloodOnDullDay.Of,
        WaterOnHotLeaves.Of,
        LongHumidNights.Of,
        TooLittleData.Of,
        SensorNotTrusted.Of,
        WateringsNotJudged.Of,
        TankOutOfLimits.Of,
        FailedAndRepeated.Of,
        GrowthStopped.Of,
        WaterInTheMorning.Of,
        MoistureJumps.Of,
        WetAtDusk.Of,
        WateredTooWet.Of,
        GradersApart.Of,
        GroupAgain.Of,
        RoundsMissed.Of,
        GradersNotKnown.Of,
        OneCauseRules.Of,
        UnexplainedRisk.Of,
    ];

    /// <summary>Ranks the findings of a period.</summary>
    public static ImmutableArray<Finding> Rank(HousePeriod period, RiskState risk, ImmutableArray<Watering>? waterings, CauseState causes, PotState pots, CareState care)
    {
        Evidence evidence = new(period, risk, waterings ?? [], CoverageOf.Period(period, risk.Hours), causes, pots, care);
        Candidate[] found = [.. Rules.Select(rule => rule(evidence)).OfType<Candidate>()];
        if (found.All(c => c.Id is OneCauseRules.Id or GradersNotKnown.Id or RoundsMissed.Id))
        {
            found = [CalmWeek.Of(evidence), .. found]; // what to measure or look at is no reason for alarm
        }

        return
        [
            .. SameHours(found.OrderByDescending(c => c.HoursAtStake))
                .Select((c, i) => new Finding(c.Id, i + 1, c.Text, c.Action, c.Caution, c.Facts) { Title = Titles.Of(c.Id), RiskHoursAvoided = c.Avoided }),
        ];
    }

    /// <summary>Waterings, spacing and humid nights may count the same hours; the lower-ranked of them say so.</summary>
    private static IEnumerable<Candidate> SameHours(IEnumerable<Candidate> ranked)
    {
        bool seen = false;
        foreach (Candidate candidate in ranked)
        {
            bool counts = candidate.Id is LateOverheadWatering.Id or LongHumidNights.Id or KeepWaterOffLeaves.Id or SpaceWider.Id or HeatAndVentEarly.Id;
            yield return counts && seen ? candidate with { Caution = Phrase.Of($"{candidate.Caution} The same hours may count in a finding above.") } : candidate;
            seen |= counts;
        }
    }
}
