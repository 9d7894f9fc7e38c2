using System.Collections.Immutable;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Science.Balance;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Who put the humidity there: the house balance of the weeks before, the waterings against alike stretches without one, and where both bear it the period replayed with something done otherwise.
/// A number is given only where the balance has skill on days that it has not seen and the comparison does not contradict it. Method, sources and error: docs/science/causes.md.
/// </summary>
public static class Attribution
{
    /// <summary>Finds what can be said of the causes.</summary>
    /// <param name="house">The house period.</param>
    /// <param name="past">The weeks before, by <see cref="Past"/>; null where there are none.</param>
    /// <param name="risk">Its risk hours.</param>
    public static CauseState Of(HousePeriod house, HousePeriod? past, RiskState risk)
    {
        HouseBalance? balance = past is null ? null : HouseBalance.Of(past);
        string? whyNot = HouseBalance.WhyNot(past, balance);
        CauseState state = new()
        {
            Balance = balance is { Fit.IsFitted: true } ? CauseReports.Of(balance) : null,
            WhyNot = whyNot ?? "",
        };
        if (balance is null || risk.Total is not Estimate total)
        {
            return state with { WhyNot = whyNot ?? Phrase.Of("The risk hours of the period carry no total.") };
        }

        bool wets = OtherWaterings.AnyWetting(house), floods = FloodedDays.Any(house);
        BalanceInputs? all = house.HasAir ? BalanceColumns.Joined(balance.Inputs, BalanceColumns.Of(house, house.FirstStep)) : null;
        AlikeHours? hours = all is not null && (wets || floods) && AlikeHours.CanCompare(house) ? new AlikeHours(past!, house, all) : null;
        WateringMatch? match = hours is null || !wets ? null : WateringMatch.Of(hours, balance);
        state = state with
        {
            Floods = hours is null || !floods ? null : FloodedDays.Of(house, hours),
            Hints = all is not null && balance.HasSkill ? WateringHints.Of(house, balance, all) : null,
        };
        state = match is null ? state : state with
        {
            Waterings = CauseReports.Of(match, house.Frame.Axis.Step.TotalHours),
            Balance = state.Balance is { } report ? CauseReports.With(report, match) : null,
        };
        if (whyNot is not null)
        {
            return state;
        }

        if (match?.Agrees == false)
        {
            return state with { WhyNot = Phrase.Of("The house balance and the comparison of waterings with alike hours contradict each other: this week's data cannot tell. A day without watering over the leaves, or vent position in the export, would make them tell.") };
        }

        if (WhyNotWatered(house, balance) is string why)
        {
            return state with { WhyNot = why };
        }

        ReplayedWeeks weeks = WeekReplay.Of(house, risk, balance);
        return state with
        {
            WhatIfs = WhatIfs.Of(weeks, total),
            Shares = WhatIfs.Shares(weeks, total),
            CausedBy = WhatIfs.Caused(weeks, total),
            NotReplayed = NotReplayed(weeks.Known),
        };
    }

    /// <summary>Waterings over the leaves in the period, of which the weeks before have none, are strange to the balance.</summary>
    private static string? WhyNotWatered(HousePeriod house, HouseBalance balance)
        => OtherWaterings.AnyWetting(house) && !balance.Fit.Terms.LeafWatering
            ? Phrase.Of("The weeks before the period have no watering over the leaves: what one does to the humidity of this house is not known yet.")
            : null;

    private static ImmutableSortedDictionary<string, string> NotReplayed(Change known)
    {
        var reasons = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (!known.HasFlag(Change.WiderSpacing))
        {
            reasons[ChangeNames.WhatIf(Change.WiderSpacing)] = Phrase.Of("Ground cover is not known: name the crop with its day of potting (or pinch) and its spacing in the nursery file.");
        }

        if (!known.HasFlag(Change.HeatAndVentBeforeSunrise))
        {
            reasons[ChangeNames.WhatIf(Change.HeatAndVentBeforeSunrise)] = Phrase.Of("Vent position is not logged: what more venting would do cannot be told.");
        }

        return reasons.ToImmutable();
    }
}
