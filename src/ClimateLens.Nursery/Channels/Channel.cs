using ClimateLens.Nursery.Languages;

namespace ClimateLens.Nursery.Channels;

/// <summary>How a faster source is reduced to, and a slower one filled in on, a house's grid.</summary>
public enum Gridding
{
    /// <summary>A state that changes smoothly: mean of faster readings, linear between slower ones.</summary>
    Smooth,

    /// <summary>A state that holds until changed (position, set point, on/off): mean of faster, hold of slower.</summary>
    Hold,

    /// <summary>An amount that falls into an interval (litres, rain): summed.</summary>
    Amount,
}

/// <summary>What a column of readings can be.</summary>
/// <param name="Name">Name in the nursery file and in the store, for example <c>airTemperature</c>.</param>
/// <param name="EnglishLabel">What people read, in English, for example "Air temperature".</param>
/// <param name="Quantity">Physical quantity; decides the units that are accepted.</param>
/// <param name="FailLow">Below this no such value exists; gross range test, flag 4. [SI unit of the quantity]</param>
/// <param name="FailHigh">Above this no such value exists. [SI unit of the quantity]</param>
/// <param name="SuspectLow">Below this a working house is doubtful; flag 3. [SI unit of the quantity]</param>
/// <param name="SuspectHigh">Above this a working house is doubtful. [SI unit of the quantity]</param>
/// <param name="Gridding">How it is aligned.</param>
/// <param name="Source">Where the limits come from.</param>
public sealed record Channel(
    string Name,
    string EnglishLabel,
    Quantity Quantity,
    double FailLow,
    double FailHigh,
    double SuspectLow,
    double SuspectHigh,
    Gridding Gridding,
    string Source)
{
    /// <summary>What people read, in the language of the moment.</summary>
    public string Label => Phrase.Of(EnglishLabel);

    /// <summary>Largest believable lone jump against both neighbours, five-minute data; NaN: no spike test. [SI unit]</summary>
    public double SpikeLimit { get; init; } = double.NaN;

    /// <summary>Largest believable change from one reading to the next, five-minute data; NaN: no rate-of-change test. [SI unit]</summary>
    public double StepLimit { get; init; } = double.NaN;

    /// <summary>A working sensor moves by at least this in any 24 hours; NaN: no attenuated-signal test. [SI unit]</summary>
    public double LeastDailyRange { get; init; } = double.NaN;

    /// <summary>
    /// A change to exactly 0 that is larger than this, and back, comes from no sensor; 0: exactly 0 never is a reading; NaN: any 0 may be.
    /// [SI unit]
    /// </summary>
    public double ZeroLimit { get; init; } = double.NaN;

    /// <summary>Unchanged for this long is doubtful; NaN: no flat-line test. [h]</summary>
    public double FlatHours { get; init; } = double.NaN;

    /// <summary>Changes under this count as unchanged. [SI unit]</summary>
    public double FlatTolerance { get; init; }

    /// <summary>Accuracy assumed for a sensor whose accuracy the nursery file does not give, as ± half-width; NaN where none is used. [SI unit]</summary>
    public double DefaultAccuracy { get; init; } = double.NaN;
}
