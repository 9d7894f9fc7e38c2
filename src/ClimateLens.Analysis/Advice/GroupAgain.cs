using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>A resistance group used again in a row against one purpose, or more often than the nursery file wants.</summary>
internal static class GroupAgain
{
    public const string Id = "groupAgain";

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Care.Records is not { } records)
        {
            return null;
        }

        var input = evidence.Period.Input;
        int limit = input.House.Care.GroupUses;
        var inARow = Rotation.InARow(input, evidence.Care.Treatments).ToArray();
        string[] repeated = [.. inARow.Select(pair => Repeated(evidence, pair.Before, pair.Again))];
        Reviews.GroupUse[] often = [.. records.Groups.Where(g => g.Uses > limit && g.Last.ToInstant() >= input.Period.Start)];
        string[] facts =
        [
            .. repeated,
            .. often.Select(g => Phrase.Of($"Group {g.Group} was used {g.Uses} times since {Say.Day(records.SeasonFrom)}; the limit set is {limit}.")),
        ];
        HashSet<string> named = [.. often.Select(g => g.Group), .. inARow.SelectMany(pair => pair.Again.Codes.Intersect(pair.Before.Codes))];
        return facts.Length == 0
            ? null
            : new Candidate(
                Id,
                Standing.Habit,
                repeated.Length > 0 ? Phrase.Of("A resistance group was used twice in a row against the same thing.") : Phrase.Of("A resistance group was used more often than the limit."),
                Phrase.Of("Before the next treatment have somebody licensed look at the rotation of groups. This page counts codes and recommends nothing."),
                Phrase.Of($"Alternating groups and limiting each is the rule of the Pacific Northwest handbook; the limit is {(input.House.Care.SetByUser.Contains("groupUses") ? Phrase.Of("the nursery file's") : Phrase.Of("common practice, no source"))}. The label rules."),
                [.. facts, .. records.Groups.Where(g => named.Contains(g.Group)).Select(Risk)]);
    }

    private static string Repeated(Evidence evidence, Treatment before, Treatment again)
        => Phrase.Of($"Group {Say.List([.. again.Codes.Intersect(before.Codes)])} on {Say.Time(before.At, evidence.Zone)} and again on {Say.Time(again.At, evidence.Zone)}{(again.Purpose.Length > 0 ? $" ({again.Purpose})" : "")}.");

    private static string Risk(Reviews.GroupUse g)
        => g.Risk == Science.Treatments.ResistanceRisk.NotKnown
            ? Phrase.Of($"Group {g.Group}: its risk of resistance is not in the list here.")
            : Phrase.Of($"Group {g.Group} ({Phrase.Of(g.Name)}): {RiskWord(g.Risk)} risk of resistance{(g.RiskSeen ? "" : Phrase.Of(", from memory"))}.");

    private static string RiskWord(Science.Treatments.ResistanceRisk risk) => risk switch
    {
        Science.Treatments.ResistanceRisk.Low => Phrase.Of("low"),
        Science.Treatments.ResistanceRisk.Medium => Phrase.Of("medium"),
        Science.Treatments.ResistanceRisk.High => Phrase.Of("high"),
        _ => Phrase.Of("not known"),
    };
}
