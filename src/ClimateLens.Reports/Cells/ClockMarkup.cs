using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>Each export's clock against the sun.</summary>
internal static class ClockMarkup
{
    /// <summary>The part, or nothing when no clock was looked at.</summary>
    public static void Write(HtmlBuilder body, Review review)
    {
        if (review.Clocks.IsEmpty)
        {
            return;
        }

        body.Line($"<h3>Clocks against the sun</h3><dl class=\"pairs\">");
        foreach (ClockReport clock in review.Clocks)
        {
            body.Line($"<div><dt>Clock of {Html.Name(clock.Source)}</dt><dd>{clock.Check.Sentence}{Mend(clock)}</dd></div>");
        }

        body.Line($"</dl>");
    }

    private static Html Mend(ClockReport clock)
        => clock.Check.Mend.Length == 0 ? Html.Empty : HtmlBuilder.Of($" <strong>What to do:</strong> {clock.Check.Mend}");
}
