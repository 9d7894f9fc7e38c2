using ClimateLens.Science.Leaf;

namespace ClimateLens.Analysis.Foliage;

/// <summary>
/// The weather of the leaves over run-in and period, step by step, as measured and before any assumed difference between the main sensor
/// and the canopy. NaN where not known.
/// </summary>
public sealed record FoliageWeather
{
    /// <summary>Air temperature: the canopy sensor's where it works, else the main sensor's. [°C]</summary>
    public required double[] AirC { get; init; }

    /// <summary>Relative humidity, likewise. [%]</summary>
    public required double[] HumidityPct { get; init; }

    /// <summary>Whether the temperature is a canopy sensor's.</summary>
    public required bool[] TemperatureInCanopy { get; init; }

    /// <summary>Whether the humidity is a canopy sensor's.</summary>
    public required bool[] HumidityInCanopy { get; init; }

    /// <summary>Where the leaf temperature comes from.</summary>
    public required LeafFrom[] LeafFrom { get; init; }

    /// <summary>Where it would come from without a leaf sensor.</summary>
    public required LeafFrom[] LeafWithoutSensor { get; init; }

    /// <summary>Difference between canopy and main sensor by step, fitted where both told; null for the assumption by ground cover.</summary>
    public CanopyAirOffset[]? FittedDifference { get; init; }

    /// <summary>Measured leaf temperature; NaN elsewhere. [°C]</summary>
    public required double[] MeasuredLeafC { get; init; }

    /// <summary>1 between sunset and sunrise, else 0.</summary>
    public required double[] Night { get; init; }

    /// <summary>Short-wave radiation absorbed by a leaf area. [W/m²]</summary>
    public required double[] AbsorbedWm2 { get; init; }

    /// <summary>Short-wave radiation over the crop; NaN where nothing tells of it. [W/m²]</summary>
    public required double[] OverCropWm2 { get; init; }

    /// <summary>Radiating temperature over the crop. [°C]</summary>
    public required double[] AboveC { get; init; }

    /// <summary>Share of a leaf side's view that no other leaf takes. [1]</summary>
    public required double[] OpenShare { get; init; }

    /// <summary>Water put onto a leaf area in each step, before what it can hold. [mm]</summary>
    public required double[] WaterMm { get; init; }

    /// <summary>Index into the days of <see cref="Crops.CoverCourse"/> for each step.</summary>
    public required int[] Day { get; init; }

    /// <summary>What it all rests on.</summary>
    public required FoliageBasis Basis { get; init; }

    /// <summary>Steps.</summary>
    public int Count => AirC.Length;
}

/// <summary>Where a leaf temperature comes from.</summary>
public enum LeafFrom : byte
{
    /// <summary>Not known, since the air is not.</summary>
    Unknown,

    /// <summary>A leaf sensor.</summary>
    Sensor,

    /// <summary>The leaf's energy balance.</summary>
    Balance,

    /// <summary>The air's temperature, less an assumed difference at night.</summary>
    NightOffset,
}
