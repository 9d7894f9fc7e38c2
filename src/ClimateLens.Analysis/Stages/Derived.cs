using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Columns that the stages add to a frame. Their names are no channels of the catalogue, so they never meet a logged column.
/// All hold NaN where a reading they need is missing or failed its checks.
/// </summary>
public static class Derived
{
    /// <summary>Air temperature that passed its checks. [°C]</summary>
    public static ColumnKey TemperatureC { get; } = new("used:airTemperature");

    /// <summary>Relative humidity that passed its checks, at most 100. [%]</summary>
    public static ColumnKey HumidityPct { get; } = new("used:relativeHumidity");

    /// <summary>Saturation vapour pressure at air temperature. [kPa]</summary>
    public static ColumnKey SaturationKPa { get; } = new("air:saturationVapourPressure");

    /// <summary>Vapour pressure. [kPa]</summary>
    public static ColumnKey VapourPressureKPa { get; } = new("air:vapourPressure");

    /// <summary>Vapour-pressure deficit of the air. [kPa]</summary>
    public static ColumnKey DeficitKPa { get; } = new("air:vapourPressureDeficit");

    /// <summary>Dew point. [°C]</summary>
    public static ColumnKey DewPointC { get; } = new("air:dewPoint");

    /// <summary>Absolute humidity. [g/m³]</summary>
    public static ColumnKey AbsoluteHumidityGm3 { get; } = new("air:absoluteHumidity");
}
