using System.Globalization;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Seasons;

/// <summary>Risk hours by week with their ranges.</summary>
internal sealed class SeasonChartCell : ISeasonCell
{
    private const double Left = 34, Top = 12, Plot = 150, Bottom = 24, Step = 30, Most = 900;

    /// <inheritdoc/>
    public string Name => "seasonChart";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How did the risk hours go, week by week?");

    /// <inheritdoc/>
    public CellContent Render(SeasonContext context)
    {
        HouseWeekSummary[] weeks = [.. context.Weeks.Select(w => w.Summary)];
        double full = Math.Max(1, weeks.Max(w => w.High ?? 0));
        double step = Math.Min(Step, (Most - Left) / weeks.Length), width = Left + (step * weeks.Length);
        HtmlBuilder svg = new();
        svg.Line($"<figure class=\"scroll\" role=\"region\" aria-label=\"Risk hours by week, scrolls sideways\" tabindex=\"0\"><svg class=\"season\" role=\"img\" width=\"{Plain(width)}\" height=\"{Plain(Top + Plot + Bottom)}\" viewBox=\"0 0 {Plain(width)} {Plain(Top + Plot + Bottom)}\" aria-label=\"{Said(weeks)}\">");
        svg.Line($"<text x=\"0\" y=\"{Plain(Top + 4)}\">{DisplayUnits.Number(full, 0)} h</text><text x=\"0\" y=\"{Plain(Top + Plot)}\">0</text><line x1=\"{Plain(Left)}\" x2=\"{Plain(width)}\" y1=\"{Plain(Top + Plot)}\" y2=\"{Plain(Top + Plot)}\"></line>");
        for (int i = 0; i < weeks.Length; i++)
        {
            double x = Left + (step * i);
            if (weeks[i] is { RiskHours: { } value, Low: { } low, High: { } high })
            {
                svg.Line($"<rect x=\"{Plain(x + 2)}\" y=\"{Plain(Y(value, full))}\" width=\"{Plain(step - 6)}\" height=\"{Plain(Top + Plot - Y(value, full))}\"><title>{SitePeriod.Of(weeks[i].Period).Name}: {DisplayUnits.Number(value, 0)} ({DisplayUnits.Number(low, 0)} to {DisplayUnits.Number(high, 0)})</title></rect><line x1=\"{Plain(x + (step / 2) - 1)}\" x2=\"{Plain(x + (step / 2) - 1)}\" y1=\"{Plain(Y(low, full))}\" y2=\"{Plain(Y(high, full))}\"></line>");
                if (step >= 20)
                {
                    svg.Line($"<text class=\"value\" x=\"{Plain(x + (step / 2) - 1)}\" y=\"{Plain(Top + Plot - 4)}\">{DisplayUnits.Number(value, 0)}</text>");
                }
            }
            else
            {
                svg.Line($"<text x=\"{Plain(x + (step / 2) - 4)}\" y=\"{Plain(Top + Plot - 4)}\">?</text>");
            }

            if (step >= 20 || i % 4 == 0)
            {
                svg.Line($"<text x=\"{Plain(x + 2)}\" y=\"{Plain(Top + Plot + 16)}\">{Short(weeks[i].Period)}</text>");
            }
        }

        svg.Line($"</svg></figure>");
        return new CellContent(Said(weeks) + ".", svg.ToHtml(), Phrase.Of("Bars: risk hours. Lines: their range over sensor error and assumptions. A question mark: not known."));
    }

    private static string Said(HouseWeekSummary[] weeks)
    {
        HouseWeekSummary[] known = [.. weeks.Where(w => w.RiskHours is not null)];
        return known.Length == 0 ? Phrase.Of("No week carries a total")
            : Phrase.Of($"From {DisplayUnits.Number(known.Min(w => w.RiskHours), 0)} to {DisplayUnits.Number(known.Max(w => w.RiskHours), 0)} risk hours a week, {DisplayUnits.Number(known[^1].RiskHours, 0)} in the last one");
    }

    private static string Short(string period) => period.Contains('W', StringComparison.Ordinal) ? period[period.IndexOf('W', StringComparison.Ordinal)..] : period[5..Math.Min(10, period.Length)];

    private static double Y(double hours, double full) => Top + (Plot * (1 - (hours / full)));

    private static string Plain(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
