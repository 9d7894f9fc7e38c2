using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Risk hours by week beside the plants that were found affected.</summary>
public sealed class ScoutingCell : IReportCell
{
    private const int MostSymptoms = 4; // the rest stand in the data
    private const double MostByChance = 0.1; // as the 5 to 95 % range, which few pairs make too narrow

    /// <inheritdoc/>
    public string Name => "scouting";

    /// <inheritdoc/>
    public string Heading => "Did risk and disease go together?";

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
        body.Line(context.DataLink(DataFiles.Scouting));
        return new CellContent(
            string.Join(' ', shown.Select(Sentence)),
            body.ToHtml(),
            "A count is held against the risk hours of the week before its own; how long a spot takes to show is not known here, and no other lag is tried. This shows whether the two went together, not that one caused "
            + "the other, and no link over few weeks does not show that there is none: weeks of one crop follow from each other, and crop, cleaning and the eye of who counts change with them. Risk hours of earlier weeks are worked out anew, with fewer draws than on their own pages, and may part from these by some hours.");
    }

    private static void Table(HtmlBuilder body, ScoutingReport scouting, ScoutedSymptom[] shown)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Risk hours and affected plants by week\" tabindex=\"0\"><table class=\"data\"><caption>Risk hours and affected plants by week</caption><thead><tr><th scope=\"col\">Week</th><th scope=\"col\">Risk hours</th>");
        foreach (ScoutedSymptom symptom in shown)
        {
            body.Line($"<th scope=\"col\">{NameOf(symptom)}, plants</th>");
        }

        body.Line($"</tr></thead><tbody>");
        for (int week = 0; week < scouting.Weeks.Length; week++)
        {
            ScoutedWeek of = scouting.Weeks[week];
            body.Line($"<tr><th scope=\"row\">{of.Week}</th><td>{(of.RiskHours is int hours ? Words.Whole(hours) : DisplayUnits.NotKnown)}</td>");
            foreach (ScoutedSymptom symptom in shown)
            {
                body.Line($"<td>{(symptom.Plants[week] is double plants ? DisplayUnits.Number(plants, 0) : "not counted")}</td>");
            }

            body.Line($"</tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static string Sentence(ScoutedSymptom symptom)
    {
        string pairs = Words.Count(symptom.Pairs, "pair", "pairs");
        if (symptom.Correlation is not { } rho)
        {
            return $"{NameOf(symptom)}: whether counts rise with risk hours is not known, from {pairs} of a count and the week before it.";
        }

        bool likely = symptom.ChanceShare <= MostByChance;
        string verdict = likely && rho.Low > 0 ? "more was found after weeks with more risk hours" : likely && rho.High < 0 ? "less was found after weeks with more risk hours" : "no clear sign either way";
        return $"{NameOf(symptom)}: {verdict} (rank correlation {Signed(rho.Value)}, {Signed(rho.Low)} to {Signed(rho.High)}, from {pairs} of a count and the week before it; {Words.Share(symptom.ChanceShare)} of random pairings are as far from nought).";
    }

    private static string NameOf(ScoutedSymptom symptom) => symptom.Symptom.Length == 0 ? "Symptom not named" : Words.Capital(symptom.Symptom);

    private static string Signed(double rho) => $"{(rho < 0 ? "\u2212" : "")}{DisplayUnits.Number(Math.Abs(rho), 2)}";
}
