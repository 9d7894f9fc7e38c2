using System.Globalization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>Risk hours as they added up over the period, both sides on one scale.</summary>
public sealed class CurvesCell : ICompareCell
{
    private const double Width = 640, Height = 180, Left = 34, Bottom = 22, Right = 110;

    /// <inheritdoc/>
    public string Name => "curves";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("When did the risk hours add up?");

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        int[] first = Sums(context.First, context.Second), second = Sums(context.Second, context.First);
        int most = Math.Max(1, Math.Max(first[^1], second[^1]));
        string at = Half(context.First, first), other = Half(context.Second, second);
        HtmlBuilder svg = new();
        svg.Line($"<figure><svg class=\"curves\" role=\"img\" viewBox=\"0 0 {Plain(Width)} {Plain(Height)}\" aria-label=\"Risk hours adding up: {context.FirstName} to {first[^1]}, {context.SecondName} to {second[^1]}\">");
        svg.Line($"<line x1=\"{Plain(Left)}\" x2=\"{Plain(Width - Right)}\" y1=\"{Plain(Height - Bottom)}\" y2=\"{Plain(Height - Bottom)}\"></line>");
        svg.Line($"<text x=\"2\" y=\"{Plain(Y(most, most) + 4)}\">{most} h</text><text x=\"2\" y=\"{Plain(Height - Bottom + 4)}\">0</text>");
        for (int i = 0; i < context.First.Hours.Length; i++)
        {
            if (i == 0 || context.First.Hours[i].Start.Date != context.First.Hours[i - 1].Start.Date)
            {
                svg.Line($"<text x=\"{Plain(X(i, first.Length))}\" y=\"{Plain(Height - 6)}\">{context.First.Hours[i].Start.Day}</text>");
            }
        }

        Line(svg, first, most, "one", context.FirstName, first[^1] >= second[^1] ? -4 : 12);
        Line(svg, second, most, "two", context.SecondName, first[^1] >= second[^1] ? 12 : -4);
        svg.Line($"</svg></figure>");
        return new CellContent(Phrase.Of($"{context.FirstName} came to {Words.Count(first[^1], "risk hour", "risk hours")}{at}, {context.SecondName} to {second[^1]}{other}."), svg.ToHtml(), Phrase.Of("Hours more likely than not at risk, added up in the order of time over the hours known of both; days of the month below."));
    }

    private static int[] Sums(Review review, Review other)
    {
        int sum = 0;
        return [.. review.Hours.Select((h, i) => sum += h.Risk == true && other.Hours[i].Risk is not null ? 1 : 0)];
    }

    private static string Half(Review review, int[] sums)
        => sums[^1] < 2 ? "" : Phrase.Of($" (half of them by {LocalTimes.Moment(review.Hours[Array.FindIndex(sums, s => 2 * s >= sums[^1])].Start)})");

    private static void Line(HtmlBuilder svg, int[] sums, int most, string name, string label, int shift)
    {
        string points = string.Join(' ', sums.Select((s, i) => $"{Plain(X(i, sums.Length))},{Plain(Y(s, most))}"));
        svg.Line($"<polyline class=\"{name}\" points=\"{points}\"></polyline><text x=\"{Plain(Width - Right + 6)}\" y=\"{Plain(Math.Clamp(Y(sums[^1], most) + shift, 10, Height - 4))}\">{Short(label)}: {sums[^1]}</text>");
    }

    private static string Short(string label) => label.Length <= 14 ? label : label[..13] + "…";

    private static double X(int hour, int hours) => Left + ((Width - Left - Right) * hour / Math.Max(1, hours - 1));

    private static double Y(int sum, int most) => 10 + ((Height - Bottom - 10) * (1 - ((double)sum / most)));

    private static string Plain(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
