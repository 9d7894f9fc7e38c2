using System.Collections.Immutable;
using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using NodaTime;

namespace ClimateLens.Analysis;

/// <summary>The whole program in one method: what a review does, in the order in which it does it.</summary>
public static class ReviewPipeline
{
    /// <summary>
    /// How much a review wants to see before its period: the week before, for comparison, and two days before that, in which the film on the
    /// leaves becomes known. An hour more than nine days, since a week in which the clock is put back has 169 hours.
    /// </summary>
    public static Duration RunIn { get; } = Duration.FromHours((9 * 24) + 1);

    /// <summary>How much before its period a review wants for what it fits and learns (<see cref="Past"/>).</summary>
    public static Duration History { get; } = Duration.FromDays(Past.HistoryDays);

    /// <summary>Reviews one house period. Pure: equal inputs give equal reviews.</summary>
    /// <param name="input">Settings, readings and records of the house from the start of its run-in to the end of the period.</param>
    public static Review Run(HouseInput input)
    {
        HousePeriod house = Alignment.Align(input);              // all sources on one grid; gaps stay gaps
        house = Clocks.Check(house);                             // each source's clock against the sun
        house = Quality.Check(house);                            // a flag for every value; failed ones drop out from here on
        house = AirStates.Add(house);                            // vapour pressure, VPD, dew point, absolute humidity
        house = CanopyCover.Add(house);                          // how far the crop has closed, day by day
        house = LeafState.Add(house);                            // the weather of the leaves: measured, modelled or assumed
        RiskState risk = RiskHours.Find(house);                  // leaf, film and risk by hour, with their probability
        HousePeriod? past = Past.Of(house);                      // the weeks before, aligned and checked alike
        CauseState causes = Attribution.Of(house, past, risk);   // who put the humidity there, and what would have been otherwise
        ImmutableArray<Watering>? waterings = Waterings.Find(house, risk, causes); // against the cut-off, with the air before and after
        OutlookReport? outlook = Tonight.Of(house, past, risk);  // the coming night, where the nights before foretell it
        PotState pots = PotChecked.Of(house, past);              // rounds, band, swings, dry-downs, graders, drying, roots
        CareState care = CareRecords.Of(house);                  // rotation, doses, floors, tanks, re-entry, growth
        ImmutableArray<Finding> findings = Findings.Rank(house, risk, waterings, causes, pots, care); // what to know and do, most hours at stake first
        SecondOpinionReport opinion = SecondOpinion.Of(house, past); // what the weeks before say of the sensors; changes nothing
        return ReviewAssembly.Assemble(house, risk, waterings, findings, opinion, causes, outlook, pots, care);
    }
}
