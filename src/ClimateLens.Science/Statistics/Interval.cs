namespace ClimateLens.Science.Statistics;

/// <summary>A number and the range it may lie in.</summary>
/// <param name="Value">Best estimate; NaN for not known.</param>
/// <param name="Low">Lower end; NaN where the evidence carries no range.</param>
/// <param name="High">Upper end; NaN likewise.</param>
public readonly record struct Interval(double Value, double Low, double High)
{
    /// <summary>Not known.</summary>
    public static Interval Unknown { get; } = new(double.NaN, double.NaN, double.NaN);
}
