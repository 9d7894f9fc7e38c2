using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Risk hours by week beside the plants that were found affected.</summary>
public sealed class ScoutingCell : IReportCell
{
    private const int MostSymptoms = 4; // the rest stand in the data
    private const int MostWeeks = 8; // likewise
    private const double MostByChance = 0.1; // as the 5 to 95 % range, which few pairs make too narrow

    /// <inheritdoc/>
    public string Name => "scouting";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Did risk and disease go together?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["scouting"], Files = [DataFiles.Scouting], Records = [RecordKind.Scouting] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["scouting"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Scouting is not { } scouting)
        {
            return CellContent.Nothing; // what is not known says that nothing was counted
        }

        ScoutedSymptom[] shown = [.. scouting.Symptoms.OrderByDescending(s => s.Plants.Count(p => p is not null)).ThenBy(s => s.Symptom, StringComparer.Ordinal).Take(MostSymptoms)];
        HtmlBuilder body = new();
        Table(body, scouting, shown);
        return new CellContent(
            string.Join(' ', shown.Select(Sentence)),
            body.ToHtml(),
            Phrase.Of("A count is held against the risk hours of the week before its own; how long a spot takes to show is not known. That the two go together does not show that one caused the other, and over few weeks "
            + "no link does not show that there is none. Earlier weeks are worked out with fewer draws than on their own pages."));
    }

    /// <summary>Weeks from left to right, the latest ones: so it stays low and fits the width of paper.</summary>
    private static void Table(HtmlBuilder body, ScoutingReport scouting, ScoutedSymptom[] shown)
    {
        int first = Math.Max(0, scouting.Weeks.Length - MostWeeks);
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Risk hours and affected plants by week\" tabindex=\"0\"><table class=\"data\"><caption>Risk hours and affected plants by week{(first > 0 ? Phrase.Of(", the latest of them") : "")} (\u2013 not counted)</caption><thead><tr><th scope=\"col\">Week</th>");
        Row(body, scouting.Weeks.Skip(first).Select(w => HtmlBuilder.Of($"<th scope=\"col\">{w.Week}</th>")));
        body.Line($"</thead><tbody><tr><th scope=\"row\">Risk hours</th>");
        Row(body, scouting.Weeks.Skip(first).Select(w => HtmlBuilder.Of($"<td>{(w.RiskHours is int hours ? Words.Whole(hours) : DisplayUnits.NotKnown)}</td>")));
        foreach (ScoutedSymptom symptom in shown)
        {
            body.Line($"<tr><th scope=\"row\">{NameOf(symptom)}, plants</th>");
            Row(body, symptom.Plants.Skip(first).Select(p => HtmlBuilder.Of($"<td>{(p is double plants ? DisplayUnits.Number(plants, 0) : "\u2013")}</td>")));
        }

        body.Line($"</tbody></table></div>");
    }

    private static void Row(HtmlBuilder body, IEnumerable<Html> cells)
    {
        foreach (Html cell in cells)
        {
            body.Add($"{cell}");
        }

        body.Line($"</tr>");
    }

    private static string Sentence(ScoutedSymptom symptom)
    {
        string pairs = Words.Count(symptom.Pairs, "pair", "pairs");
        if (symptom.Correlation is not { } rho)
        {
            return Phrase.Of($"{NameOf(symptom)}: whether counts rise with risk hours is not known, from {pairs} of a count and the week before it.");
        }

        bool likely = symptom.ChanceShare <= MostByChance;
        string verdict = likely && rho.Low > 0 ? Phrase.Of("more was found after weeks with more risk hours") : likely && rho.High < 0 ? Phrase.Of("less was found after weeks with more risk hours") : Phrase.Of("no clear sign either way");
        return Phrase.Of($"{NameOf(symptom)}: {verdict} (rank correlation {Signed(rho.Value)}, {Signed(rho.Low)} to {Signed(rho.High)}, from {pairs} of a count and the week before it; {Words.Share(symptom.ChanceShare)} of random pairings are as far from nought).");
    }

    private static string NameOf(ScoutedSymptom symptom) => symptom.Symptom.Length == 0 ? Phrase.Of("Symptom not named") : Words.Capital(symptom.Symptom);

    private static string Signed(double rho) => $"{(rho < 0 ? "\u2212" : "")}{DisplayUnits.Number(Math.Abs(rho), 2)}";
}
