using System.Globalization;
using ClimateLens.Nursery.Languages;
using Plotly.NET;
using Part = System.Collections.Generic.Dictionary<string, object>;

namespace ClimateLens.Reports.Charts;

/// <summary>Axes, shapes and titles of a week's chart, as Plotly's attributes.</summary>
internal static class FigureParts
{
    private const int MostDayNames = 8;

    public static Part TimeAxis(WeekChart chart)
    {
        int every = (chart.Days.Count + MostDayNames - 1) / MostDayNames;
        var named = chart.Days.Where((_, i) => i % Math.Max(1, every) == 0).ToList();
        return new Part
        {
            ["range"] = new[] { 0, chart.HourNames.Count },
            ["tickvals"] = named.Select(d => d.Hour).ToArray(),
            ["ticktext"] = named.Select(d => d.Name).ToArray(),
            ["tickangle"] = 0,
            ["ticklabelposition"] = "outside right",
            ["ticks"] = "outside",
            ["ticklen"] = 20,
            ["tickcolor"] = Palette.Grid,
            ["gridcolor"] = Palette.Grid,
            ["zeroline"] = false,
            ["fixedrange"] = true,
            ["anchor"] = "free",
            ["position"] = 0,
        };
    }

    public static Part ValueAxis((double Low, double High) domain, (double Low, double High)? span)
    {
        Part axis = new()
        {
            ["domain"] = new[] { Short(domain.Low), Short(domain.High) },
            ["gridcolor"] = Palette.Grid,
            ["zeroline"] = false,
            ["fixedrange"] = true,
            ["nticks"] = 5,
            ["automargin"] = true,
        };
        if (span is { } known)
        {
            axis["range"] = new[] { known.Low, known.High };
        }

        return axis;
    }

    public static Part StripAxis((double Low, double High) domain) => new()
    {
        ["domain"] = new[] { Short(domain.Low), Short(domain.High) },
        ["range"] = new[] { 0, 1 },
        ["visible"] = false,
        ["fixedrange"] = true,
    };

    public static Part[] Shapes(WeekChart chart)
    {
        IEnumerable<Part> nights = chart.Nights.Select(n => Rectangle(n.From, n.To));
        IEnumerable<Part> waterings = chart.Waterings.Select(w => Upright(w.AtHour, w.Late));
        IEnumerable<Part> levels = chart.Panels
            .SelectMany((p, i) => p.Levels.Select(l => (Level: l, Axis: i == 0 ? "y" : "y" + (i + 1).ToString(CultureInfo.InvariantCulture))))
            .Select(p => Level(p.Level, p.Axis, chart.HourNames.Count));
        return [.. nights, .. waterings, .. levels];
    }

    public static Part[] Titles(WeekChart chart, IReadOnlyList<(double Low, double High)> domains) =>
    [
        .. chart.Panels.Select((panel, i) => new Part
        {
            ["text"] = Title(panel),
            ["xref"] = "paper",
            ["yref"] = "paper",
            ["x"] = 0,
            ["xanchor"] = "left",
            ["y"] = Short(domains[i].High),
            ["yanchor"] = "bottom",
            ["align"] = "left",
            ["showarrow"] = false,
            ["font"] = new Part { ["size"] = 13 },
            ["bgcolor"] = "rgba(255,255,255,0.85)",
        }),
    ];

    public static void Frame(Layout layout)
    {
        layout.SetProperty("showlegend", false);
        layout.SetProperty("hovermode", "closest");
        layout.SetProperty("dragmode", false);
        layout.SetProperty("margin", new Part { ["l"] = 40, ["r"] = 8, ["t"] = 4, ["b"] = 42 });
        layout.SetProperty("paper_bgcolor", "#ffffff");
        layout.SetProperty("plot_bgcolor", "rgba(0,0,0,0)");
        layout.SetProperty("separators", $"{Language.Current.DecimalMark}{Language.Current.GroupMark}");
        layout.SetProperty("font", new Part { ["family"] = "system-ui, sans-serif", ["size"] = 12, ["color"] = Palette.Ink });
    }

    /// <summary>The title doubles as legend: each line's name in its colour behind a sample of its dash.</summary>
    private static string Title(ChartPanel panel)
    {
        string lines = string.Join("   ", panel.Lines.Select(l => $"<span style=\"color:{l.Colour}\">{Sample(l.Dash)} {l.Name}</span>"));
        return panel.Title.Length == 0 ? lines : $"{panel.Title}   {lines}";
    }

    private static string Sample(string dash) => dash switch { "dash" => "╍╍", "dot" => "┈┈", _ => "━━" };

    private static Part Rectangle(int from, int to) => new()
    {
        ["type"] = "rect",
        ["x0"] = from,
        ["x1"] = to,
        ["yref"] = "paper",
        ["y0"] = 0,
        ["y1"] = 1,
        ["fillcolor"] = Palette.Night,
        ["line"] = new Part { ["width"] = 0 },
        ["layer"] = "below",
    };

    private static Part Upright(double at, bool late) => new()
    {
        ["type"] = "line",
        ["x0"] = Short(at),
        ["x1"] = Short(at),
        ["yref"] = "paper",
        ["y0"] = 0,
        ["y1"] = 1,
        ["line"] = new Part { ["color"] = late ? Palette.Late : Palette.Watering, ["width"] = 1, ["dash"] = late ? "dash" : "dot" },
        ["layer"] = "below",
    };

    private static Part Level(ChartLevel level, string axis, int hours) => new()
    {
        ["type"] = "line",
        ["x0"] = 0,
        ["x1"] = hours,
        ["yref"] = axis,
        ["y0"] = Short(level.Value),
        ["y1"] = Short(level.Value),
        ["line"] = new Part { ["color"] = Palette.Ink, ["width"] = 1.2, ["dash"] = level.Dash },
    };

    private static double Short(double value) => Math.Round(value, 4);
}
