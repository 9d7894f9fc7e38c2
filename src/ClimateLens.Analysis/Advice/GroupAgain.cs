using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Text;

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
        string[] repeated = [.. Rotation.InARow(input, evidence.Care.Treatments).Select(pair => Repeated(evidence, pair.Before, pair.Again))];
        string[] often =
        [
            .. records.Groups
                .Where(g => g.Uses > limit && g.Last.ToInstant() >= input.Period.Start)
                .Select(g => $"Group {g.Group} was used {g.Uses} times since {Say.Day(records.SeasonFrom)}; the limit set is {limit}."),
        ];
        string[] facts = [.. repeated, .. often];
        return facts.Length == 0
            ? null
            : new Candidate(
                Id,
                Standing.Habit,
                repeated.Length > 0 ? "A resistance group was used twice in a row against the same thing." : "A resistance group was used more often than the limit.",
                "Before the next treatment have somebody licensed look at the rotation of groups. This page counts codes and recommends nothing.",
                $"Alternating groups and limiting each is the rule of the Pacific Northwest handbook; the limit is {(input.House.Care.SetByUser.Contains("groupUses") ? "the nursery file's" : "common practice, no source")}. The label rules.",
                [.. facts, .. records.Groups.Where(g => facts.Any(f => f.Contains($"roup {g.Group} ", StringComparison.Ordinal))).Select(Risk)]);
    }

    private static string Repeated(Evidence evidence, Treatment before, Treatment again)
        => $"Group {string.Join(" and ", again.Codes.Intersect(before.Codes))} on {Say.Time(before.At, evidence.Zone)} and again on {Say.Time(again.At, evidence.Zone)}{(again.Purpose.Length > 0 ? $" ({again.Purpose})" : "")}.";

    private static string Risk(Reviews.GroupUse g)
        => g.Risk == Science.Treatments.ResistanceRisk.NotKnown
            ? $"Group {g.Group}: its risk of resistance is not in the list here."
            : $"Group {g.Group} ({g.Name}): {g.Risk.ToString().ToLowerInvariant()} risk of resistance{(g.RiskSeen ? "" : ", from memory")}.";
}
