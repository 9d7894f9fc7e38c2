using ClimateLens.Nursery.Languages;
using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Nursery.Settings;

/// <summary>How pots are checked in a house, and what they should be like. The usual values are common practice without a published source.</summary>
public sealed record PotRules
{
    /// <summary>Rounds of a day, in order, none overlapping.</summary>
    public ImmutableArray<PotRound> Rounds { get; init; } =
    [
        new(Phrase.Id("first thing"), new LocalTime(5, 30), new LocalTime(9, 29)),
        new(Phrase.Id("late morning"), new LocalTime(9, 30), new LocalTime(12, 59)),
        new(Phrase.Id("early afternoon"), new LocalTime(13, 0), new LocalTime(17, 0)),
    ];

    /// <summary>Rounds due on a Saturday or Sunday, the first ones of the day; null: all of them.</summary>
    public int? WeekendRounds { get; init; }

    /// <summary>Driest level that the crop should reach. [level]</summary>
    public double BandLow { get; init; } = 2;

    /// <summary>Wettest level that it should stand at. [level]</summary>
    public double BandHigh { get; init; } = 4;

    /// <summary>Weight of a pot at level 1, or null. [g]</summary>
    public double? DryWeightG { get; init; }

    /// <summary>Weight of a pot at level 4, soaked and drained, or null. [g]</summary>
    public double? SoakedWeightG { get; init; }

    /// <summary>Names of the keys that the nursery file sets; the others are usual values.</summary>
    public ImmutableSortedSet<string> SetByUser { get; init; } = ImmutableSortedSet<string>.Empty;

    /// <summary>Rounds that are due on a day.</summary>
    public int DueOn(LocalDate day)
        => day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday ? WeekendRounds ?? Rounds.Length : Rounds.Length;
}
