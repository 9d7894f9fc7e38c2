using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;

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

    /// <summary>"about 9 of the 65 risk hours (2 to 14)".</summary>
    public static string Hours(Evidence evidence, Estimate avoided)
        => $"about {Say.Number(avoided.Value)} of the {Say.Count(evidence.RiskHours, "risk hour")} ({Say.Number(avoided.Low)} to {Say.Number(avoided.High)})";

    /// <summary>What such a number rests on.</summary>
    public const string Caution = "Worked out by replaying the week with the house balance; such numbers were too low on simulated weeks, so take this as \"at least about\".";
}
