namespace ClimateLens.Science.Leaf;

/// <summary>A cover in balance.</summary>
/// <param name="OuterC">Outer face. [°C]</param>
/// <param name="InnerC">Inner face. [°C]</param>
/// <param name="ScreenC">Screen; NaN where none is closed. [°C]</param>
/// <param name="RadiatingC">Radiating temperature that the crop sees. [°C]</param>
/// <param name="HeatLossWm2">Heat that passes the cover, by the shares with and without screen. [W/m²]</param>
public readonly record struct CoverState(double OuterC, double InnerC, double ScreenC, double RadiatingC, double HeatLossWm2)
{
    internal static CoverState Unknown { get; } = new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);
}
