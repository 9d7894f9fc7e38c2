namespace ClimateLens.Science.Leaf;

/// <summary>Steps in which a sensor among the leaves and the main sensor were read, as columns of the same length; NaN where not known.</summary>
/// <param name="mainC">Main sensor. [°C]</param>
/// <param name="mainHumidityPct">Main sensor, 0 to 100. [%]</param>
/// <param name="canopyC">Sensor among the leaves. [°C]</param>
/// <param name="canopyHumidityPct">Sensor among the leaves, 0 to 100. [%]</param>
/// <param name="cover">Ground cover, 0 to 1. [1]</param>
/// <param name="sunWm2">Short-wave radiation over the crop, 0 to 1500. [W/m²]</param>
/// <param name="hoursSinceWatering">Hours since water last was given; infinite for never. [h]</param>
public readonly ref struct CanopyAirSample(
    ReadOnlySpan<double> mainC, ReadOnlySpan<double> mainHumidityPct, ReadOnlySpan<double> canopyC, ReadOnlySpan<double> canopyHumidityPct,
    ReadOnlySpan<double> cover, ReadOnlySpan<double> sunWm2, ReadOnlySpan<double> hoursSinceWatering)
{
    /// <summary>Main sensor. [°C]</summary>
    public ReadOnlySpan<double> MainC { get; } = mainC;

    /// <summary>Main sensor. [%]</summary>
    public ReadOnlySpan<double> MainHumidityPct { get; } = mainHumidityPct;

    /// <summary>Sensor among the leaves. [°C]</summary>
    public ReadOnlySpan<double> CanopyC { get; } = canopyC;

    /// <summary>Sensor among the leaves. [%]</summary>
    public ReadOnlySpan<double> CanopyHumidityPct { get; } = canopyHumidityPct;

    /// <summary>Ground cover. [1]</summary>
    public ReadOnlySpan<double> Cover { get; } = cover;

    /// <summary>Short-wave radiation over the crop. [W/m²]</summary>
    public ReadOnlySpan<double> SunWm2 { get; } = sunWm2;

    /// <summary>Hours since water last was given. [h]</summary>
    public ReadOnlySpan<double> HoursSinceWatering { get; } = hoursSinceWatering;

    /// <summary>Steps in each column.</summary>
    public int Length => MainC.Length;

    internal void Check()
    {
        Guard.SameLength(Length, MainHumidityPct.Length);
        Guard.SameLength(Length, CanopyC.Length);
        Guard.SameLength(Length, CanopyHumidityPct.Length);
        Guard.SameLength(Length, Cover.Length);
        Guard.SameLength(Length, SunWm2.Length);
        Guard.SameLength(Length, HoursSinceWatering.Length);
    }

    internal CanopyAirDrivers Drivers(int step) => new(Cover[step], SunWm2[step], HoursSinceWatering[step]);
}
