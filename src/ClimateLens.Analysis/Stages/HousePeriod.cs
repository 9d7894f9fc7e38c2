using System.Collections.Immutable;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Time;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// One house between two instants, with its run-in: what the stages hand on. A stage adds columns, flags and notes;
/// it takes nothing away.
/// </summary>
/// <param name="Input">All that is looked at.</param>
/// <param name="Frame">Aligned columns from the start of the run-in to the end of the period.</param>
/// <param name="FirstStep">Index of the first step of the period itself.</param>
/// <param name="Series">Every series that was aligned, in the order in which sensors are reported.</param>
/// <param name="Sun">Sunrise and sunset at the nursery.</param>
/// <param name="Notes">What is to be said of each series.</param>
public sealed record HousePeriod(
    HouseInput Input,
    Frame Frame,
    int FirstStep,
    ImmutableArray<Series> Series,
    SunCalendar Sun,
    SensorNotes Notes)
{
    /// <summary>The house's main air temperature, or null.</summary>
    public Series? Temperature { get; init; }

    /// <summary>The house's main relative humidity as logged, or null.</summary>
    public Series? Humidity { get; init; }

    /// <summary>The logged series from which humidity is derived where no relative humidity is logged, or null.</summary>
    public Series? HumidityFrom { get; init; }

    /// <summary>The house's main leaf temperature, or null.</summary>
    public Series? Leaf { get; init; }

    /// <summary>For each step, whether the main source has a row in it, whatever its values.</summary>
    public ImmutableArray<bool> RowSeen { get; init; } = [];

    /// <summary>For each series of a counter, the steps whose amount came in a gap before them.</summary>
    public ImmutableDictionary<ColumnKey, bool[]> OverGap { get; init; } = ImmutableDictionary<ColumnKey, bool[]>.Empty;

    /// <summary>What each check says of each series; empty before the quality stage.</summary>
    public ImmutableDictionary<ColumnKey, SeriesFlags> Checks { get; init; } = ImmutableDictionary<ColumnKey, SeriesFlags>.Empty;

    /// <summary>Each source's clock against the sun.</summary>
    public ImmutableArray<ClockReport> Clocks { get; init; } = [];

    /// <summary>Ground cover day by day; null before the canopy stage.</summary>
    public CoverCourse? Cover { get; init; }

    /// <summary>The canopy's state, or null where the nursery file does not tell enough.</summary>
    public CanopyState? Canopy { get; init; }

    /// <summary>The weather of the leaves; null before the leaf stage.</summary>
    public FoliageWeather? Foliage { get; init; }

    /// <summary>The waterings of run-in and period, each once and in time order.</summary>
    internal ImmutableArray<WateringEvent> Events { get; init; } = [];

    /// <summary>Grid steps in an hour.</summary>
    public int StepsPerHour => (int)(Duration.FromHours(1).BclCompatibleTicks / Frame.Axis.Step.BclCompatibleTicks);

    /// <summary>The period with one more check of a series, rolled into its flags.</summary>
    public HousePeriod With(ColumnKey key, QualityCheck check, QualityFlag[] flags)
    {
        SeriesFlags more = Checks[key].With(check, flags);
        return this with { Checks = Checks.SetItem(key, more), Frame = Frame.WithFlags(key, [.. more.RolledUp]) };
    }

    /// <summary>Whether air temperature and humidity are both there, at least as series.</summary>
    public bool HasAir => Temperature is not null && (Humidity is not null || HumidityFrom is not null);
}

/// <summary>One logged series on the house's grid.</summary>
/// <param name="Key">Its column in the frame; distinct.</param>
/// <param name="House">House of its source, or <see cref="ReadingBatch.WholeNursery"/>.</param>
/// <param name="Source">Export name.</param>
/// <param name="Sensor">Sensor name as in the export; may be empty.</param>
/// <param name="Channel">What it is.</param>
/// <param name="StepSeconds">Native step of its source. [s]</param>
public sealed record Series(ColumnKey Key, string House, string Source, string Sensor, Channel Channel, int StepSeconds)
{
    /// <summary>How people read it: the label, and the sensor where it has a name.</summary>
    public string Label => Sensor.Length == 0 ? Channel.Label : $"{Channel.Label} \"{Sensor}\"";
}
