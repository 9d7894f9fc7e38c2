using System.Globalization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>The comparison of waterings with alike hours, and the balance, with what they are worth.</summary>
internal static class BalanceMarkup
{
    private const double WeakMatch = 0.25;

    /// <summary>What waterings over the leaves did to the humidity.</summary>
    public static void Matched(HtmlBuilder body, MatchedWaterings? matched)
    {
        if (matched is null)
        {
            return;
        }

        string effect = matched.EffectGm3 is not { } gm3 ? Phrase.Of($"None of {Words.Count(matched.Rounds, "round", "rounds")} of watering over the leaves could be compared with alike hours without one: there are none at that time of day and in such weather, or other waterings were too near.")
            : matched.EffectGm3.Low == matched.EffectGm3.High ? Phrase.Of($"{Words.Count(matched.Matched, "round", "rounds")} of watering over the leaves could be compared with alike hours without one: {DisplayUnits.VapourDensity(gm3.Value)} more water in the air over the six hours after the start; too few for a range.")
            : Phrase.Of($"Over the six hours after its start a watering over the leaves put {DisplayUnits.VapourDensity(gm3.Value)} ({DisplayUnits.Number(gm3.Low, 1)} to {DisplayUnits.Number(gm3.High, 1)}) more water into the air than alike hours without one had ({matched.Matched} of {Words.Count(matched.Rounds, "round", "rounds")} in this and the weeks before).");
        string model = matched.ModelGm3 is { } m ? Phrase.Of($" The balance gives {DisplayUnits.VapourDensity(m.Value)} ({DisplayUnits.Number(m.Low, 1)} to {DisplayUnits.Number(m.High, 1)}) for the same{(matched.Agrees switch { true => Phrase.Of(": they agree"), false => Phrase.Of(": they contradict each other"), null => "" })}.") : "";
        body.Line($"<p>{effect}{model}</p>");
        body.Line($"<details><summary>How fair is that comparison?</summary>");
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"How alike the hours are\" tabindex=\"0\"><table class=\"data\"><caption>How alike the hours are, in standard deviations</caption><thead><tr><th scope=\"col\">In</th><th scope=\"col\">To all hours without watering</th><th scope=\"col\">To those compared</th></tr></thead><tbody>");
        foreach (MatchedCovariate c in matched.Balance)
        {
            body.Line($"<tr><th scope=\"row\">{Words.Capital(c.Name)}</th><td>{DisplayUnits.Number(c.Before, 2)}</td><td>{DisplayUnits.Number(c.After, 2)}{(Math.Abs(c.After) > WeakMatch ? Phrase.Of(" (weak)") : "")}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        string left = matched.LeftOut.IsEmpty ? "" : Phrase.Of($" Left out, since not logged or without change: {string.Join(", ", matched.LeftOut)}.");
        string placebo = matched.PlaceboRejections is { } share
            ? Phrase.Of($"Tried on {Words.Count(matched.PlaceboSets, "set", "sets")} of moments without any watering, it saw an effect in {Words.Share(share)}; one in ten would be honest.")
            : Phrase.Of("There were too few moments without watering to try it on.");
        body.Line($"<p>{placebo}{left}</p></details>");
    }

    /// <summary>The balance, what it is worth and what it lacks.</summary>
    public static void Balance(HtmlBuilder body, HouseBalanceReport? balance)
    {
        if (balance is null)
        {
            return;
        }

        string skill = balance is { SkillOverDayBefore: { } before, SkillOverMeanDay: { } mean }
            ? Phrase.Of($"On {Words.Count(balance.HeldOutDays, "day", "days")} that it had not seen its skill is {DisplayUnits.Number(before, 2)} over the day before and {DisplayUnits.Number(mean, 2)} over the mean day (1 is perfect, 0 no better)")
            : Phrase.Of("What it is worth on days that it has not seen could not be told");
        body.Line($"<p>House balance: fitted to {DisplayUnits.Number(balance.Days, 0)} days before the period. {skill}; it is off by {DisplayUnits.VapourDensity(balance.ResidualGm3)} root mean square.</p>");
        Learned(body, balance.Learned);
        body.Line($"<details><summary>What was fitted</summary>");
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Parameters of the balance, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Parameters of the house balance, a square metre of floor</caption><thead><tr><th scope=\"col\">Parameter</th><th scope=\"col\">Value</th><th scope=\"col\">Standard error</th><th scope=\"col\">Physics allows</th><th scope=\"col\">Unit</th></tr></thead><tbody>");
        foreach (BalanceParameter p in balance.Parameters)
        {
            string error = p.AtBound.Length > 0 ? (p.AtBound == "low" ? Phrase.Of("at its lower bound") : Phrase.Of("at its upper bound")) : p.Told ? Plain(p.Error ?? double.NaN) : Phrase.Of($"{Plain(p.Error ?? double.NaN)}: the data say little");
            body.Line($"<tr><th scope=\"row\">{Words.Capital(Words.Spaced(p.Name))}</th><td>{Plain(p.Value)}</td><td>{error}</td><td>{Plain(p.Low)} to {Plain(p.High)}</td><td>{p.Unit}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        foreach (string lack in balance.Lacks)
        {
            body.Line($"<p>{lack}</p>");
        }

        body.Line($"</details>");
    }

    /// <summary>The challenger without physics, and which of the two is better.</summary>
    private static void Learned(HtmlBuilder body, LearnedResponseReport? learned)
    {
        if (learned is not { SkillOverDayBefore: { } before, SkillOverMeanDay: { } mean })
        {
            return;
        }

        string kind = learned.Kind == "plane" ? Phrase.Of("a plane through the readings") : Phrase.Of("a plane through the readings with boosted trees on what it leaves over");
        string effect = learned.EffectGm3 is { } gm3
            ? Phrase.Of($" For the waterings compared it gives {DisplayUnits.VapourDensity(gm3.Value)}; learned from two halves of the days apart, {DisplayUnits.Number(gm3.Low, 1)} to {DisplayUnits.Number(gm3.High, 1)}.")
            : "";
        string better = learned is { Better: { } name, RootMeanSquareGm3: { } own, BalanceRootMeanSquareGm3: { } other }
            ? Phrase.Of($" On the hours that both tell it is off by {DisplayUnits.Number(own, 2)} g/m³, the balance by {DisplayUnits.Number(other, 2)} g/m³: {(name == "balance" ? Phrase.Of("the balance is better.") : Phrase.Of("it is better at telling such days. What-ifs stay with the balance: one without physics has not seen a week done otherwise."))}")
            : "";
        body.Line($"<p>Learned response, without physics ({kind}), on the same days held out: skill {DisplayUnits.Number(before, 2)} over the day before and {DisplayUnits.Number(mean, 2)} over the mean day.{better}{effect}</p>");
    }

    private static string Plain(double value) => double.IsNaN(value) ? DisplayUnits.NotKnown : Language.Current.Number(value.ToString("0.###", CultureInfo.InvariantCulture));
}
