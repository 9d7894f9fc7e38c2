using System.Collections.Immutable;

namespace ClimateLens.Nursery.Settings;

/// <summary>What the records of treatments, floors and tanks are held against. The usual values are common practice without a published source; the label rules over all of them.</summary>
public sealed record CareRules
{
    /// <summary>Uses of one resistance group in a season above which it is named. The season is the crop's, or a year.</summary>
    public int GroupUses { get; init; } = 3;

    /// <summary>How long a growth regulator on a floor or bench is kept in mind. [d]</summary>
    public int FloorDays { get; init; } = 180;

    /// <summary>Crops that a trace of growth regulator harms, lower case.</summary>
    public ImmutableArray<string> SensitiveCrops { get; init; } = [];

    /// <summary>How long a tank's reading stands for it. [h]</summary>
    public double TankHours { get; init; } = 24;

    /// <summary>Limits of tanks.</summary>
    public ImmutableArray<TankLimit> Tanks { get; init; } = [];

    /// <summary>Names of the keys that the nursery file sets; the others are usual values.</summary>
    public ImmutableSortedSet<string> SetByUser { get; init; } = ImmutableSortedSet<string>.Empty;
}
