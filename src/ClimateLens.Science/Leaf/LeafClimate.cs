namespace ClimateLens.Science.Leaf;

/// <summary>The weather of a leaf as columns of the same length and step; NaN where not known.</summary>
/// <param name="airC">Air among the leaves. [°C]</param>
/// <param name="relativeHumidityPct">Relative humidity among the leaves, 0 to 100. [%]</param>
/// <param name="absorbedWm2">Short-wave radiation absorbed by a leaf area. [W/m²]</param>
/// <param name="aboveC">Radiating temperature over the crop: cover or screen. [°C]</param>
/// <param name="airSpeedMs">Air speed at the leaf, 0.01 or more. [m/s]</param>
/// <param name="measuredLeafC">Leaf temperature where a sensor tells it, NaN elsewhere; empty for none. [°C]</param>
/// <param name="openShare">Share of a leaf side's view that no other leaf takes (<see cref="MeanLeaf.OpenShare"/>), above 0 to 1; empty for 1. [1]</param>
/// <remarks>Of the open share the upper side sees the cover, the lower one bench and pots at the temperature of the air; other leaves are as warm as the leaf itself.</remarks>
public readonly ref struct LeafClimate(
    ReadOnlySpan<double> airC, ReadOnlySpan<double> relativeHumidityPct, ReadOnlySpan<double> absorbedWm2,
    ReadOnlySpan<double> aboveC, ReadOnlySpan<double> airSpeedMs, ReadOnlySpan<double> measuredLeafC = default,
    ReadOnlySpan<double> openShare = default)
{
    /// <summary>Air among the leaves. [°C]</summary>
    public ReadOnlySpan<double> AirC { get; } = airC;

    /// <summary>Relative humidity among the leaves. [%]</summary>
    public ReadOnlySpan<double> RelativeHumidityPct { get; } = relativeHumidityPct;

    /// <summary>Short-wave radiation absorbed by a leaf area. [W/m²]</summary>
    public ReadOnlySpan<double> AbsorbedWm2 { get; } = absorbedWm2;

    /// <summary>Radiating temperature over the crop. [°C]</summary>
    public ReadOnlySpan<double> AboveC { get; } = aboveC;

    /// <summary>Air speed at the leaf. [m/s]</summary>
    public ReadOnlySpan<double> AirSpeedMs { get; } = airSpeedMs;

    /// <summary>Measured leaf temperature; empty for none. [°C]</summary>
    public ReadOnlySpan<double> MeasuredLeafC { get; } = measuredLeafC;

    /// <summary>Share of a leaf side's view that no other leaf takes; empty for 1. [1]</summary>
    public ReadOnlySpan<double> OpenShare { get; } = openShare;

    /// <summary>Steps in each column.</summary>
    public int Length => AirC.Length;

    /// <summary>The same from a step on.</summary>
    /// <param name="step">First step, 0 to <see cref="Length"/>.</param>
    public LeafClimate From(int step) => Between(step, Length);

    /// <summary>The steps in [from, to).</summary>
    /// <param name="from">First step.</param>
    /// <param name="to">The step after the last.</param>
    public LeafClimate Between(int from, int to) => new(
        AirC[from..to], RelativeHumidityPct[from..to], AbsorbedWm2[from..to], AboveC[from..to], AirSpeedMs[from..to],
        MeasuredLeafC.IsEmpty ? MeasuredLeafC : MeasuredLeafC[from..to], OpenShare.IsEmpty ? OpenShare : OpenShare[from..to]);

    internal void Check()
    {
        Guard.SameLength(Length, RelativeHumidityPct.Length);
        Guard.SameLength(Length, AbsorbedWm2.Length);
        Guard.SameLength(Length, AboveC.Length);
        Guard.SameLength(Length, AirSpeedMs.Length);
        if (!MeasuredLeafC.IsEmpty)
        {
            Guard.SameLength(Length, MeasuredLeafC.Length);
        }

        if (!OpenShare.IsEmpty)
        {
            Guard.SameLength(Length, OpenShare.Length);
        }
    }
}
