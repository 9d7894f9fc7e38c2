using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Cells;

/// <summary>Pots and roots: levels by bench and day, rounds, how alike people grade, what dries, and what that means for roots.</summary>
public sealed class PotsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "pots";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Pots and roots: too wet, too dry?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["graders", "drying", "roots"], Files = [DataFiles.Pots, DataFiles.Drying, DataFiles.Graders], Records = [RecordKind.PotChecks] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["pots"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Pots is not { } pots)
        {
            return CellContent.Unanswered(
                Phrase.Of("No pot was checked in this period. Three minutes a day, eight pots lifted and graded from 1 to 5, would tell which benches are too wet at dusk, which dry out, and which to water first tomorrow: climatelens sheet prints the sheet."));
        }

        HtmlBuilder body = new();
        PotStrip.Add(body, pots);
        PotTablesMarkup.Drying(body, pots.Drying);
        Roots(body, context.Review.Roots);
        body.Line(BeforeWaterings(pots));
        body.Line($"<div class=\"screen\">"); // a wall needs the strip and tomorrow; dry pots are among the findings
        PotTablesMarkup.DryDowns(body, pots);
        PotTablesMarkup.Rounds(body, pots);
        PotTablesMarkup.Agreement(body, pots.Agreement);
        body.Line($"</div>");
        return new CellContent(
            Sentence(pots, context.Review.Roots),
            body.ToHtml(),
            Phrase.Of("Levels are what people saw and lifted; two people may part by half a level. The band is the nursery file's, or 2 to 4 where it sets none. The swing index sums what each day's fall is beyond 1.2 levels (choice of this project). "
            + "Dry pots are wetted again gently and their roots looked at; any treatment follows the label and a licensed person."));
    }

    private static string Sentence(PotReport pots, RootReport? roots)
    {
        int due = pots.Days.Sum(d => d.Due), walked = pots.Days.Sum(d => Math.Min(d.Walked, d.Due));
        string rounds = Phrase.Of($"{Words.Count(pots.Count, "pot check", "pot checks")}, {walked} of {Words.Count(due, "round", "rounds")} walked");
        string band = pots.Band is not { } b ? "" : Phrase.Of($"; {Words.Share((b.Checks - b.Drier - b.Wetter) / (double)b.Checks)} of the levels were within the band, {Words.Whole(b.Drier)} drier and {Words.Whole(b.Wetter)} wetter");
        string dry = pots.DryDowns.IsEmpty ? "" : Phrase.Of($"; a pot was found dry {Words.Count(pots.DryDowns.Length, "time", "times")}");
        string signal = roots?.Signal switch { "act" => Phrase.Of(" Root-rot weather: look at roots now."), "watch" => Phrase.Of(" Root-rot weather: keep an eye on roots."), "quiet" => Phrase.Of(" No root-rot weather was seen."), _ => "" };
        return $"{rounds}{band}{dry}.{signal}";
    }

    private static Html BeforeWaterings(PotReport pots)
    {
        int wet = pots.BeforeWaterings.Count(w => w.Verdict == "tooWet"), dry = pots.BeforeWaterings.Count(w => w.Verdict == "tooDry");
        return pots.BeforeWaterings.IsEmpty
            ? Html.Empty
            : HtmlBuilder.Of($"<p class=\"note\">Of {Words.Count(pots.BeforeWaterings.Length, "watering of a bench", "waterings of a bench")} with a check up to six hours before, {Words.Whole(wet)} fell on pots that were still wet and {Words.Whole(dry)} on pots that were too dry.</p>");
    }

    private static void Roots(HtmlBuilder body, RootReport? roots)
    {
        if (roots is not { Reasons.IsEmpty: false })
        {
            return;
        }

        body.Line($"<h3>Why roots want {(roots.Signal == "act" ? Phrase.Of("looking at") : Phrase.Of("watching"))}</h3><ul>");
        foreach (RootReason reason in roots.Reasons)
        {
            body.Line($"<li>{reason.Text} <span class=\"source\">{reason.Source}</span></li>");
        }

        body.Line($"</ul><p class=\"note\">A signal with its reasons, not a chance of disease.</p>");
    }
}
