using System.Globalization;
using System.Text;

namespace ClimateLens.Science.Tests.Figures;

/// <summary>A small line chart as SVG text for docs/science: colours for the colour-blind, dashes for print, a text for screen readers.</summary>
internal sealed class LineChart(string title, string description, Axis across, Axis up)
{
    private const double Left = 60, Top = 40, Width = 400, Height = 250;
    private static readonly string[] Colours = ["#0072B2", "#D55E00", "#009E73", "#CC79A7"]; // [OKABE08]
    private static readonly string[] Dashes = ["", "8 4", "2 3", "8 3 2 3"];
    private readonly StringBuilder _lines = new();
    private int _count;

    public LineChart Add(string name, double from, double to, Func<double, double> curve)
    {
        const int pieces = 100;
        string points = string.Join(' ', Enumerable.Range(0, pieces + 1)
            .Select(i => from + ((to - from) * i / pieces))
            .Select(x => (X: x, Y: curve(x)))
            .Where(point => point.Y >= up.From && point.Y <= up.To)
            .Select(point => $"{Text(AtX(point.X))},{Text(AtY(point.Y))}"));
        string look = $"stroke=\"{Colours[_count]}\" stroke-width=\"2\" stroke-dasharray=\"{Dashes[_count]}\" fill=\"none\"";
        double y = Top + 10 + (20 * _count++);
        double x = Left + Width + 15;
        _lines.AppendLine($"<polyline {look} points=\"{points}\"/>");
        _lines.AppendLine($"<line {look} x1=\"{Text(x)}\" y1=\"{Text(y)}\" x2=\"{Text(x + 28)}\" y2=\"{Text(y)}\"/><text x=\"{Text(x + 34)}\" y=\"{Text(y + 4)}\">{name}</text>");
        return this;
    }

    public string Svg()
    {
        var svg = new StringBuilder();
        svg.AppendLine("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 350\" role=\"img\" font-family=\"sans-serif\" font-size=\"12\">");
        svg.AppendLine($"<title>{title}</title><desc>{description}</desc><rect width=\"640\" height=\"350\" fill=\"white\"/>");
        svg.AppendLine($"<text x=\"{Text(Left)}\" y=\"22\" font-size=\"14\">{title}</text>");
        foreach (double x in across.Ticks)
        {
            svg.AppendLine($"<path d=\"M{Text(AtX(x))} {Text(Top)}v{Text(Height)}\" stroke=\"#ddd\"/><text x=\"{Text(AtX(x))}\" y=\"{Text(Top + Height + 16)}\" text-anchor=\"middle\">{Text(x)}</text>");
        }

        foreach (double y in up.Ticks)
        {
            svg.AppendLine($"<path d=\"M{Text(Left)} {Text(AtY(y))}h{Text(Width)}\" stroke=\"#ddd\"/><text x=\"{Text(Left - 6)}\" y=\"{Text(AtY(y) + 4)}\" text-anchor=\"end\">{Text(y)}</text>");
        }

        svg.AppendLine($"<text x=\"{Text(Left + (Width / 2))}\" y=\"{Text(Top + Height + 38)}\" text-anchor=\"middle\">{across.Label}</text>");
        svg.AppendLine($"<text transform=\"translate(16 {Text(Top + (Height / 2))}) rotate(-90)\" text-anchor=\"middle\">{up.Label}</text>");
        return svg.Append(_lines).AppendLine("</svg>").ToString().ReplaceLineEndings("\n");
    }

    private double AtX(double x) => Left + (Width * (x - across.From) / (across.To - across.From));

    private double AtY(double y) => Top + (Height * (up.To - y) / (up.To - up.From));

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
