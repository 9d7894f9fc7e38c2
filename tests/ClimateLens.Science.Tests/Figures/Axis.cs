namespace ClimateLens.Science.Tests.Figures;

/// <summary>An axis of a chart.</summary>
internal sealed record Axis(string Label, double From, double To, double Step)
{
    public IEnumerable<double> Ticks => Enumerable.Range(0, (int)Math.Round((To - From) / Step) + 1).Select(i => From + (i * Step));
}
