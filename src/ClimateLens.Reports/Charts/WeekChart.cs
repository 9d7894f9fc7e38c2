namespace ClimateLens.Reports.Charts;

/// <summary>A line of one value an hour; null breaks the line.</summary>
/// <param name="Name">What it is, with its unit.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Dash">Plotly's dash name.</param>
/// <param name="Values">One value an hour of the period.</param>
/// <param name="Decimals">Decimals to write and show.</param>
internal sealed record HourLine(string Name, string Colour, string Dash, IReadOnlyList<double?> Values, int Decimals)
{
    /// <summary>Half the width of a band drawn about the line, in its unit; null for none.</summary>
    public double? Band { get; init; }
}

/// <summary>One panel of a chart: lines that share a unit.</summary>
/// <param name="Title">Title with the unit.</param>
/// <param name="Lines">Lines; at least one.</param>
/// <param name="Levels">Levels to draw across.</param>
internal sealed record ChartPanel(string Title, IReadOnlyList<HourLine> Lines, params IReadOnlyList<ChartLevel> Levels)
{
    /// <summary>What the axis spans in every house and week, in the unit of the lines, so that pages can be laid side by side; values beyond stretch it.</summary>
    public (double Low, double High)? Usual { get; init; }

    /// <summary>What the axis spans; null where the drawing library chooses.</summary>
    public (double Low, double High)? Span
    {
        get
        {
            double[] values = [.. Lines.SelectMany(l => l.Values).OfType<double>().Where(double.IsFinite)];
            return Usual is not { } usual ? null
                : values.Length == 0 ? usual
                : (Math.Min(usual.Low, Math.Floor(values.Min())), Math.Max(usual.High, Math.Ceiling(values.Max())));
        }
    }
}

/// <summary>A level drawn across a panel.</summary>
/// <param name="Value">Where, in the unit of the panel.</param>
/// <param name="Dash">Plotly's dash name.</param>
internal sealed record ChartLevel(double Value, string Dash);

/// <summary>A watering mark.</summary>
/// <param name="AtHour">Elapsed hours from the start of the period. [h]</param>
/// <param name="Late">Whether it wetted leaves after the cut-off.</param>
/// <param name="Label">What the pointer shows.</param>
internal sealed record WateringMark(double AtHour, bool Late, string Label);

/// <summary>
/// Panels under one another over the elapsed hours of a period. Elapsed hours, not clock hours: the repeated hour of
/// autumn keeps its own place, and the missing one of spring leaves no hole.
/// </summary>
/// <param name="Panels">Panels from the top.</param>
/// <param name="HourNames">Local name of each hour, for the pointer.</param>
/// <param name="Days">Elapsed hour at which each local day starts, and its name.</param>
/// <param name="Nights">Stretches of night: from and to in elapsed hours.</param>
/// <param name="Waterings">Marks, in time order.</param>
internal sealed record WeekChart(
    IReadOnlyList<ChartPanel> Panels,
    IReadOnlyList<string> HourNames,
    IReadOnlyList<(int Hour, string Name)> Days,
    IReadOnlyList<(int From, int To)> Nights,
    IReadOnlyList<WateringMark> Waterings);
