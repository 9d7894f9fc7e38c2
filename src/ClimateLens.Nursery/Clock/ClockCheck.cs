using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Nursery.Clock;

/// <summary>What a clock looks like against the sun.</summary>
public enum ClockVerdict
{
    /// <summary>The data do not tell; <see cref="ClockCheck.Sentence"/> says why.</summary>
    NotKnown,

    /// <summary>No fault as large as <see cref="ClockCheck.SmallestMin"/>.</summary>
    Right,

    /// <summary>Ahead or behind, all the time or for a stretch of it.</summary>
    Wrong,

    /// <summary>It gains or loses week by week.</summary>
    Drifting,

    /// <summary>The dates follow each other only with day and month swapped.</summary>
    SwappedDates,

    /// <summary>Hours from 1 to 12 only: AM and PM are lost.</summary>
    HalfDay,

    /// <summary>Light lasts much longer or shorter than it can at this date and latitude.</summary>
    DayLength,
}

/// <summary>A clock held against the sun.</summary>
/// <param name="Verdict">What it looks like.</param>
/// <param name="Channel">Channel that it was judged by; empty when by none.</param>
/// <param name="Sensor">Its sensor; empty for the only one.</param>
/// <param name="Days">Days that could be judged.</param>
/// <param name="Sentence">What is to be said, as finished plain sentences.</param>
/// <param name="Mend">What to do, with the key of the nursery file; empty when nothing is.</param>
public sealed record ClockCheck(ClockVerdict Verdict, string Channel, string Sensor, int Days, string Sentence, string Mend)
{
    /// <summary>Smallest offset that could be told from a right clock, or null. [min]</summary>
    public double? SmallestMin { get; init; }

    /// <summary>Stretches in which the clock ran alike, in time order.</summary>
    public ImmutableArray<ClockSpell> Spells { get; init; } = [];

    /// <summary>Gain a week of the last spell; below 0 it loses; null when there are too few days. [min/week]</summary>
    public double? DriftMinPerWeek { get; init; }

    /// <summary>Half-width of the range of that. [min/week]</summary>
    public double? DriftErrorMinPerWeek { get; init; }

    /// <summary>Median length of the light, or null. [h]</summary>
    public double? LitHours { get; init; }

    /// <summary>Median of sunrise to sunset of these days, or null. [h]</summary>
    public double? DaylightHours { get; init; }

    /// <summary>Whether something is to be mended.</summary>
    public bool IsFault => Verdict is not (ClockVerdict.NotKnown or ClockVerdict.Right);
}

/// <summary>Days in a row in which a clock ran alike.</summary>
/// <param name="From">First day that could be judged, by the clock.</param>
/// <param name="To">Last day.</param>
/// <param name="Days">Days that could be judged.</param>
/// <param name="OffsetMin">Offset from the sun; above 0 ahead. [min]</param>
/// <param name="ErrorMin">Half-width of its range: scatter, what the sky and the house may do, and what a stamp may name. [min]</param>
/// <param name="IsFault">Whether it counts as wrong.</param>
public sealed record ClockSpell(LocalDate From, LocalDate To, int Days, double OffsetMin, double ErrorMin, bool IsFault);
