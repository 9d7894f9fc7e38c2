using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>The tables beneath the strip of levels: what is to come, rounds, people, dry pots.</summary>
internal static class PotTablesMarkup
{
    private const int MostDry = 8; // the rest stand in review.json

    /// <summary>Drying and tomorrow's levels by bench.</summary>
    public static void Drying(HtmlBuilder body, DryingReport? drying)
    {
        if (drying is null)
        {
            return;
        }

        Open(body, Phrase.Of("Drying of the benches"), Phrase.Of("How fast benches dry, and their level on the day after the period if they are not watered before"), Phrase.Of("Bench"), Phrase.Of("Levels lost a day"), Phrase.Of("Last seen"), Phrase.Of("Morning"), Phrase.Of("Afternoon"), "");
        foreach (BenchDrying b in drying.Benches)
        {
            string last = b.Last is { } seen ? $"{DisplayUnits.Number(seen.Level, 1)}, {LocalTimes.Moment(seen.At)}" : DisplayUnits.NotKnown;
            body.Line($"<tr><th scope=\"row\">{PotStrip.Bench(b.Bench)}</th><td>{(b.FallADay is { } fall ? DisplayUnits.Number(fall, 1) : DisplayUnits.NotKnown)}</td><td>{last}</td><td>{Level(b.Morning)}</td><td>{Level(b.Afternoon)}</td><td>{(b.WaterInTheMorning ? Phrase.Of("water in the morning") : "")}</td></tr>");
        }

        Close(body);
        string none = drying.Score?.Skill > 0 && drying.Benches.All(b => b.Morning is null) ? Phrase.Of(" No level is told here: every bench was watered since its last check, or that check is more than a day old.") : "";
        body.Line($"<p class=\"note\">{Score(drying)}{none}</p>");
    }

    /// <summary>Which rounds were walked.</summary>
    public static void Rounds(HtmlBuilder body, PotReport pots)
    {
        Open(body, Phrase.Of("Rounds"), Phrase.Of("Rounds walked of those due"), Phrase.Of("Round"), Phrase.Of("Weekdays"), Phrase.Of("Weekend"));
        foreach (PotRoundReport r in pots.Rounds)
        {
            body.Line($"<tr><th scope=\"row\">{Words.Capital(r.Name)}</th><td>{r.WeekdaysWalked} of {r.WeekdaysDue}</td><td>{(r.WeekendDue == 0 ? Phrase.Of("not due") : Phrase.Of($"{r.WeekendWalked} of {r.WeekendDue}"))}</td></tr>");
        }

        Close(body);
        if (pots.People.Length > 0)
        {
            body.Line($"<p class=\"note\">Checked by {string.Join(", ", pots.People.Select(p => $"{(p.Grader.Length == 0 ? Phrase.Of("nobody who signed") : p.Grader)} ({Words.Count(p.Checks, "pot", "pots")}, {Words.Count(p.Days, "day", "days")})"))}.</p>");
        }
    }

    /// <summary>How alike people grade.</summary>
    public static void Agreement(HtmlBuilder body, AgreementReport agreement)
    {
        if (!agreement.Pairs.IsEmpty)
        {
            Open(body, Phrase.Of("How alike people grade"), Phrase.Of("How alike people grade the same pots within an hour, with the weeks before"), Phrase.Of("Who"), Phrase.Of("Pots"), Phrase.Of("Kappa, quadratic"), Phrase.Of("Kappa, linear"), Phrase.Of("First less second, levels"));
            foreach (GraderPair p in agreement.Pairs)
            {
                body.Line($"<tr><th scope=\"row\">{p.First} and {p.Second}</th><td>{p.Pots} in {Words.Count(p.Rounds, "round", "rounds")}</td><td>{Range(p.KappaQuadratic, 2)}</td><td>{Range(p.KappaLinear, 2)}</td><td>{Range(p.Bias, 1)}</td></tr>");
            }

            Close(body);
            foreach (GraderPair p in agreement.Pairs)
            {
                Confusion(body, p);
            }
        }

        if (!agreement.AgainstWeights.IsEmpty)
        {
            body.Line($"<p class=\"note\">Against the pots' weights, in levels: {string.Join("; ", agreement.AgainstWeights.Select(w => Phrase.Of($"{w.Grader} {Range(w.Bias, 1)} over {Words.Count(w.Pots, "pot", "pots")}")))}. Which weight belongs to which level is a choice of this project and shifts all alike: compare people with each other.</p>");
        }

        if (agreement.PotsNeeded is { } needed && agreement.Graders.Length > 1)
        {
            body.Line($"<p class=\"note\">Too few pots were graded by every two people: a side-by-side round of {needed} pots would find a difference of half a level (<code>climatelens sheet --pairs {needed}</code> prints the sheet).</p>");
        }
    }

    /// <summary>Pots that went dry, worst first.</summary>
    public static void DryDowns(HtmlBuilder body, PotReport pots)
    {
        if (pots.DryDowns.IsEmpty)
        {
            return;
        }

        Open(body, Phrase.Of("Pots that went dry"), Phrase.Of($"Pots found dry, worst first{(pots.DryDowns.Length > MostDry ? Phrase.Of($" ({MostDry} of {Words.Whole(pots.DryDowns.Length)})") : "")}"), Phrase.Of("Seen"), Phrase.Of("Bench"), Phrase.Of("Pot"), Phrase.Of("Level"), Phrase.Of("Leaves"), Phrase.Of("Watered after"), Phrase.Of("Saturated within a day"));
        foreach (DryDown d in pots.DryDowns.Take(MostDry))
        {
            string watered = d.HoursToWatering is { } h ? $"{DisplayUnits.Number(h, 0)} h" : DisplayUnits.NotKnown;
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(d.At)}</th><td>{PotStrip.Bench(d.Bench)}</td><td>{d.Pot}</td><td>{(d.Level is { } l ? DisplayUnits.Number(l, 1) : "\u2013")}</td><td>{(d.Leaves == LeafSign.NotKnown ? Phrase.Of("not noted") : Words.Spaced(System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(d.Leaves.ToString())))}</td><td>{watered}</td><td>{Words.YesNo(d.SaturatedAfter)}</td></tr>");
        }

        Close(body);
    }

    private static void Confusion(HtmlBuilder body, GraderPair pair)
    {
        body.Line($"<details class=\"screen\"><summary>What {pair.First} and {pair.Second} gave</summary>");
        double[] levels = [.. pair.Confusion.SelectMany(c => new[] { c.First, c.Second }).Distinct().Order()];
        Open(body, Phrase.Of("Levels given"), Phrase.Of($"Pots by the level that {pair.First} (rows) and {pair.Second} (columns) gave"), [Phrase.Of("Level"), .. levels.Select(l => DisplayUnits.Number(l, 1))]);
        foreach (double first in levels)
        {
            body.Add($"<tr><th scope=\"row\">{DisplayUnits.Number(first, 1)}</th>");
            foreach (double second in levels)
            {
                int count = pair.Confusion.Where(c => c.First == first && c.Second == second).Sum(c => c.Pots);
                body.Add($"<td>{(count == 0 ? "\u2013" : Words.Whole(count))}</td>");
            }

            body.Line($"</tr>");
        }

        Close(body);
        body.Line($"</details>");
    }

    private static string Score(DryingReport drying) => drying.Score switch
    {
        null => Phrase.Of("Tomorrow's levels are not told: too few past days to hold such forecasts against."),
        { Skill: null or <= 0 } s => Phrase.Of($"Tomorrow's levels are not told: over {Words.Count(s.Forecasts, "past forecast", "past forecasts")} \"same as yesterday\" was no worse."),
        { } s => Phrase.Of($"Over {Words.Count(s.Forecasts, "past forecast", "past forecasts")} made from the days before each, the miss was {DisplayUnits.Number(s.Rmse, 2)} levels, \"same as yesterday\" {DisplayUnits.Number(s.RmseYesterday, 2)} (skill {DisplayUnits.Number(s.Skill, 2)}); {Words.Share(s.ShareInRange)} lay in the range."),
    };

    private static string Level(LevelForecast? forecast) => forecast is null ? DisplayUnits.NotKnown : Range(forecast.Level, 1);

    private static string Range(Estimate? e, int decimals)
        => e is null ? DisplayUnits.NotKnown : Phrase.Of($"{Signed(e.Value, decimals)} ({Signed(e.Low, decimals)} to {Signed(e.High, decimals)})");

    private static string Signed(double value, int decimals) => $"{(Math.Round(value, decimals) < 0 ? "\u2212" : "")}{DisplayUnits.Number(Math.Abs(value), decimals)}";

    /// <summary>Opens a table that scrolls on a narrow screen.</summary>
    internal static void Open(HtmlBuilder body, string label, string caption, params ReadOnlySpan<string> heads)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"{label}\" tabindex=\"0\"><table class=\"data\"><caption>{caption}</caption><thead><tr>");
        foreach (string head in heads)
        {
            body.Add($"<th scope=\"col\">{(head.Length == 0 ? HtmlBuilder.Of($"<span class=\"vh\">To do</span>") : Html.Text(head))}</th>");
        }

        body.Line($"</tr></thead><tbody>");
    }

    /// <summary>Closes it.</summary>
    internal static void Close(HtmlBuilder body) => body.Line($"</tbody></table></div>");
}
