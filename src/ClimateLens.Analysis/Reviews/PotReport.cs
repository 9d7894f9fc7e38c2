using System.Collections.Immutable;
using ClimateLens.Analysis.Pots;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>What people saw of the pots in the period.</summary>
/// <param name="Count">Checks in the period.</param>
/// <param name="Rounds">Coverage by round.</param>
/// <param name="Days">Coverage by day.</param>
/// <param name="People">Checks by person.</param>
/// <param name="Band">Within the crop's band; null without a level.</param>
/// <param name="BeforeWaterings">Levels before waterings.</param>
/// <param name="Benches">Levels and swings by bench.</param>
/// <param name="Jumps">Jumps from one day to the next.</param>
/// <param name="DryDowns">Pots that went dry, worst first.</param>
/// <param name="Agreement">How alike people grade.</param>
/// <param name="Drying">How fast benches dry and what is to come; null where that is not known.</param>
public sealed record PotReport(
    int Count,
    ImmutableArray<PotRoundReport> Rounds,
    ImmutableArray<PotDayReport> Days,
    ImmutableArray<PotPerson> People,
    PotBandReport? Band,
    ImmutableArray<LevelBeforeWatering> BeforeWaterings,
    ImmutableArray<PotBenchReport> Benches,
    ImmutableArray<LevelJump> Jumps,
    ImmutableArray<DryDown> DryDowns,
    AgreementReport Agreement,
    DryingReport? Drying);

/// <summary>A round of the day: how often it was due and walked.</summary>
public sealed record PotRoundReport(string Name, int WeekdaysDue, int WeekdaysWalked, int WeekendDue, int WeekendWalked);

/// <summary>A day: rounds due and walked, and checks made at any time of it.</summary>
public sealed record PotDayReport(LocalDate Date, bool Weekend, int Due, int Walked, int Checks);

/// <summary>A person's checks and days.</summary>
/// <param name="Grader">As signed; empty where nobody signed.</param>
/// <param name="Checks">Checks.</param>
/// <param name="Days">Days with one.</param>
public sealed record PotPerson(string Grader, int Checks, int Days);

/// <summary>Checks against the crop's band of levels.</summary>
/// <param name="Low">Driest level that the crop should reach.</param>
/// <param name="High">Wettest level that it should stand at.</param>
/// <param name="Checks">Checks with a level.</param>
/// <param name="Drier">Those below the band.</param>
/// <param name="Wetter">Those above it.</param>
/// <param name="LateChecks">Checks in the last round of the day or after.</param>
/// <param name="LateWet">Those of them at the upper end of the band or above.</param>
public sealed record PotBandReport(double Low, double High, int Checks, int Drier, int Wetter, int LateChecks, int LateWet);

/// <summary>A bench before a watering.</summary>
/// <param name="Start">Start of the watering.</param>
/// <param name="Bench">Bench.</param>
/// <param name="Level">Mean level of its last visit.</param>
/// <param name="HoursBefore">How long before. [h]</param>
/// <param name="Verdict"><c>tooWet</c>, <c>inBand</c> or <c>tooDry</c>.</param>
public sealed record LevelBeforeWatering(OffsetDateTime Start, string Bench, double Level, double HoursBefore, string Verdict);

/// <summary>A bench in the period.</summary>
/// <param name="Bench">Bench; empty where checks name none.</param>
/// <param name="Checks">Checks with a level.</param>
/// <param name="MeanLevel">Mean of its visits.</param>
/// <param name="SwingIndex">Swing index. [levels]</param>
/// <param name="DaysWithTwo">Days with two visits or more, on which alone it can grow.</param>
/// <param name="Visits">Its visits in time order.</param>
/// <param name="Waterings">Starts of the waterings that reached it.</param>
public sealed record PotBenchReport(string Bench, int Checks, double MeanLevel, double SwingIndex, int DaysWithTwo, ImmutableArray<PotVisit> Visits, ImmutableArray<OffsetDateTime> Waterings);

/// <summary>What a round saw of a bench: the mean level and the number of pots.</summary>
public sealed record PotVisit(OffsetDateTime At, double Level, int Checks);

/// <summary>A jump of two levels or more from one day to the next.</summary>
public sealed record LevelJump(string Bench, OffsetDateTime From, double FromLevel, OffsetDateTime To, double ToLevel);

/// <summary>A pot that went dry.</summary>
/// <param name="At">When it was seen.</param>
/// <param name="Bench">Bench.</param>
/// <param name="Pot">Pot; empty where none was named.</param>
/// <param name="Level">Level, or null.</param>
/// <param name="Leaves">How its leaves stood.</param>
/// <param name="HoursToWatering">Until the next watering within a day; null when none is known. [h]</param>
/// <param name="SaturatedAfter">Whether it, or else its bench, was seen saturated within a day; null when it was not looked at.</param>
public sealed record DryDown(OffsetDateTime At, string Bench, string Pot, double? Level, LeafSign Leaves, double? HoursToWatering, bool? SaturatedAfter);
