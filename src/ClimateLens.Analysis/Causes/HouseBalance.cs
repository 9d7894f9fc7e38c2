using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Languages;
using ClimateLens.Science.Balance;

namespace ClimateLens.Analysis.Causes;

/// <summary>The vapour balance fitted to the weeks before a period.</summary>
/// <param name="Inputs">Columns of those weeks.</param>
/// <param name="Fit">The fit; see its problem where there is none.</param>
/// <param name="Score">How it did on days held out; null where that could not be told.</param>
internal sealed record HouseBalance(BalanceInputs Inputs, BalanceFit Fit, HeldOutScore? Score)
{
    /// <summary>Its challenger, scored on the same days; null where there is no balance or too little to learn from.</summary>
    public LearnedResponse? Learned { get; init; }

    /// <summary>Fewer days than this before the period carry no balance: two weeks. Choice of this project. [d]</summary>
    public const int FewestDays = 14;

    /// <summary>Whether it was fitted and beats the plain references on days that it has not seen.</summary>
    public bool HasSkill => Fit.IsFitted && Score is { HasSkill: true };

    /// <summary>Fits the balance.</summary>
    /// <param name="before">The weeks before the period, with air and cover.</param>
    public static HouseBalance Of(HousePeriod before)
    {
        BalanceInputs inputs = BalanceColumns.Of(before, before.FirstStep);
        BalanceFit fit = BalanceFit.Of(inputs);
        return new HouseBalance(inputs, fit, fit.IsFitted ? BalanceScore.Of(inputs) : null) { Learned = fit.IsFitted ? LearnedResponse.Of(inputs) : null };
    }

    /// <summary>Why it says nothing; null where it does.</summary>
    /// <param name="before">The weeks before the period; null where there are none.</param>
    /// <param name="balance">The balance; null where it was not fitted.</param>
    public static string? WhyNot(HousePeriod? before, HouseBalance? balance)
    {
        double days = before is null ? 0 : (before.Frame.Axis.End - before.Frame.Axis.Start).TotalDays;
        return days < FewestDays ? Phrase.Of($"Readings begin only {Text.Say.Number(Math.Floor(days))} days before the period; the house balance takes {FewestDays} to be fitted.")
            : balance!.Fit.Problem switch
            {
                BalanceProblem.NoOutsideHumidity => Phrase.Of("The house balance needs temperature and humidity outside: without them nobody can tell what left the house. A weather station in the nursery file, even one nearby, would tell."),
                BalanceProblem.NoHouseAir => Phrase.Of("The house balance needs air temperature and humidity of the house in the weeks before."),
                BalanceProblem.TooLittle => Phrase.Of($"Fewer than {BalanceFit.FewestDays} days of the weeks before have humidity inside and outside together."),
                _ when balance.Score is null => Phrase.Of("No day could be held out to see what the house balance is worth."),
                _ when !balance.Score.HasSkill => Phrase.Of($"The house balance does not foretell days that it has not seen better than a plain guess: its skill is {Text.Say.Number(Math.Round(balance.Score.Persistence.Skill, 2))} over the day before and {Text.Say.Number(Math.Round(balance.Score.DailyCurve.Skill, 2))} over the mean day (1 is perfect, 0 no better). Vent position in the export, or a sensor that is trusted more, would help."),
                _ => null,
            };
    }
}
