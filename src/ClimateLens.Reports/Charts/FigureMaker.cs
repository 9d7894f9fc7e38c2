using System.Globalization;
using ClimateLens.Nursery.Languages;
using Microsoft.FSharp.Core;
using Plotly.NET;
using SharpChart = Plotly.NET.CSharp.Chart;

namespace ClimateLens.Reports.Charts;

/// <summary>
/// Builds the figure of a chart with Plotly.NET, without its values: those are put in by <see cref="FigureJson"/>,
/// which costs microseconds where the package's own serialiser costs tens of milliseconds a line.
/// </summary>
internal static class FigureMaker
{
    // Shares of the height: the title above each panel, and the strip of watering marks. A chart of one panel is low,
    // so that the same letters take a larger share.
    private const double TitleOfMany = 0.06;
    private const double TitleOfOne = 0.12;
    private const double StripOfMany = 0.045;
    private const double StripOfOne = 0.09;

    /// <summary>Traces in the order of panels and lines, then one trace of watering marks when there are any.</summary>
    public static GenericChart Build(WeekChart chart)
    {
        List<GenericChart> traces = [];
        for (int panel = 0; panel < chart.Panels.Count; panel++)
        {
            foreach (HourLine line in chart.Panels[panel].Lines)
            {
                traces.Add(Anchored(Line(line), panel));
            }
        }

        if (chart.Waterings.Count > 0)
        {
            traces.Add(Anchored(Marks(), chart.Panels.Count));
        }

        return GenericChart.setLayout(LayoutOf(chart), SharpChart.Combine(traces));
    }

    /// <summary>Share of the height that each panel takes, from the top, and last the strip of watering marks.</summary>
    public static IReadOnlyList<(double Low, double High)> Domains(WeekChart chart)
    {
        bool one = chart.Panels.Count == 1;
        double title = one ? TitleOfOne : TitleOfMany;
        double top = chart.Waterings.Count == 0 ? 1 : 1 - (one ? StripOfOne : StripOfMany);
        double height = (top - (title * chart.Panels.Count)) / chart.Panels.Count;
        List<(double, double)> domains = [];
        for (int i = 0; i < chart.Panels.Count; i++)
        {
            double high = top - title - (i * (height + title));
            domains.Add((Math.Max(0, high - height), high));
        }

        domains.Add((top, 1));
        return domains;
    }

    private static GenericChart Line(HourLine line) => SharpChart.Line<double, double, string>(
        x: [],
        y: [],
        Name: line.Name,
        LineColor: Color.fromString(line.Colour),
        LineWidth: 1.8,
        LineDash: DashOf(line.Dash),
        UseDefaults: false);

    private static GenericChart Marks() => SharpChart.Point<double, double, string>(
        x: [],
        y: [],
        Name: Phrase.Of("Waterings"),
        UseDefaults: false);

    private static StyleParam.DrawingStyle DashOf(string dash) => dash switch
    {
        "dash" => StyleParam.DrawingStyle.Dash,
        "dot" => StyleParam.DrawingStyle.Dot,
        _ => StyleParam.DrawingStyle.Solid,
    };

    private static GenericChart Anchored(GenericChart chart, int panel) => GenericChart.mapTrace(
        FuncConvert.FromFunc<Trace, Trace>(trace =>
        {
            trace.SetProperty("yaxis", AxisName("y", panel));
            return trace;
        }),
        chart);

    private static Layout LayoutOf(WeekChart chart)
    {
        Layout layout = new();
        IReadOnlyList<(double Low, double High)> domains = Domains(chart);
        layout.SetProperty("xaxis", FigureParts.TimeAxis(chart));
        for (int i = 0; i < chart.Panels.Count; i++)
        {
            layout.SetProperty(AxisName("yaxis", i), FigureParts.ValueAxis(domains[i], chart.Panels[i].Span));
        }

        if (chart.Waterings.Count > 0)
        {
            layout.SetProperty(AxisName("yaxis", chart.Panels.Count), FigureParts.StripAxis(domains[^1]));
        }

        layout.SetProperty("shapes", FigureParts.Shapes(chart));
        layout.SetProperty("annotations", FigureParts.Titles(chart, domains));
        FigureParts.Frame(layout);
        return layout;
    }

    private static string AxisName(string stem, int index)
        => index == 0 ? stem : stem + (index + 1).ToString(CultureInfo.InvariantCulture);
}
