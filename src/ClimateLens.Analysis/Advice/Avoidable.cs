using System.Collections.Immutable;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Hours that a change would have avoided, where the data carry that.</summary>
internal static class Avoidable
{
    /// <summary>Fewer hours than this are no advice: a choice of this project. [h]</summary>
    private const double LeastHours = 2;

    /// <summary>The hours that a change avoids; null where that is not known.</summary>
    public static Estimate? By(Evidence evidence, Change change)
        => evidence.Causes.WhatIfs is { } all ? all.FirstOrDefault(w => w.Name == ChangeNames.WhatIf(change))?.RiskHoursAvoided : null;

    /// <summary>Whether a change avoids enough hours to be advised: two at least, and some at the low end of the range.</summary>
    public static bool IsWorthwhile(Estimate? avoided) => avoided is { } hours && hours.Value >= LeastHours && hours.Low > 0;

    /// <summary>"With water by drip, about 9 of the 65 risk hours (2 to 14) would not have been."</summary>
    /// <param name="had">What is done otherwise, as the beginning of the sentence.</param>
    /// <param name="evidence">What the rules look at.</param>
    /// <param name="avoided">Hours avoided.</param>
    public static string Sentence(string had, Evidence evidence, Estimate avoided)
        => Phrase.Of($"{had}, about {Say.Number(avoided.Value)} of the {Say.Count(evidence.RiskHours, "risk hour")} ({Say.Number(avoided.Low)} to {Say.Number(avoided.High)}) would not have been.");

    /// <summary>The finding that a change would have been worthwhile; null where it would not, or where that is not known.</summary>
    /// <param name="evidence">What the rules look at.</param>
    /// <param name="change">The change.</param>
    /// <param name="id">Id of the finding.</param>
    /// <param name="had">What is done otherwise, as the beginning of a sentence.</param>
    /// <param name="action">What to do.</param>
    /// <param name="mind">What to mind besides.</param>
    /// <param name="facts">What it rests on besides.</param>
    public static Candidate? Advice(Evidence evidence, Change change, string id, string had, string action, string mind, ImmutableArray<string> facts)
        => By(evidence, change) is { } avoided && IsWorthwhile(avoided)
            ? new Candidate(id, avoided.Value, Sentence(had, evidence, avoided), action, $"{Caution} {mind}", facts) { Avoided = avoided }
            : null;

    /// <summary>What such a number rests on.</summary>
    public static string Caution => Phrase.Of("Worked out by replaying the week with the house balance; such numbers were too low on simulated weeks, so take this as \"at least about\".");
}
