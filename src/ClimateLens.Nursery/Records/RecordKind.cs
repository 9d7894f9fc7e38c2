namespace ClimateLens.Nursery.Records;

/// <summary>What people or machines note beside the readings. The names are those of <c>kind</c> in the nursery file, in camelCase.</summary>
public enum RecordKind
{
    /// <summary>A watering: start, end or minutes, method, litres, bench.</summary>
    Waterings,

    /// <summary>A pot check: bench, pot, grader, level.</summary>
    PotChecks,

    /// <summary>A plant's width or height.</summary>
    PlantWidths,

    /// <summary>A treatment: active ingredient, group code.</summary>
    Treatments,

    /// <summary>What happened on a floor or bench.</summary>
    Floors,

    /// <summary>A water tank's reading.</summary>
    Tanks,

    /// <summary>Plants or traps looked at.</summary>
    Scouting,
}
