using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>What a check that learned how the house's sensors usually go together says of the period. It changes no value and no flag.</summary>
/// <param name="LearnedFrom">Start of the readings that it learned from.</param>
/// <param name="LearnedTo">Their end, exclusive: the start of the period.</param>
/// <param name="Sensors">What it says of each sensor that it could learn, in the order in which sensors are reported.</param>
/// <param name="NotLearned">The sensors that it could not learn, and why.</param>
public sealed record SecondOpinionReport(
    OffsetDateTime LearnedFrom,
    OffsetDateTime LearnedTo,
    ImmutableArray<LearnedSensorReport> Sensors,
    ImmutableArray<NotLearned> NotLearned);

/// <summary>The second opinion on one sensor, all its exports together.</summary>
/// <param name="Channel">Channel name.</param>
/// <param name="Sensor">Sensor name; empty for the only one.</param>
/// <param name="DaysLearned">Days that it was learned from.</param>
/// <param name="Model"><c>linear</c>, or <c>linearAndTrees</c> where trees made the held-out error smaller.</param>
/// <param name="HeldOutError">95 of 100 held-out steps lay no further from what was expected. [SI unit of the channel]</param>
/// <param name="StepLimit">A step further from what is expected is suspect. [SI unit of the channel]</param>
/// <param name="Judged">Steps of the period that could be judged.</param>
/// <param name="Suspect">Those of them that lie further out.</param>
/// <param name="Suspects">They, as stretches, in time order.</param>
/// <param name="Shift">The longest shift that lasted, or null.</param>
public sealed record LearnedSensorReport(
    string Channel,
    string Sensor,
    int DaysLearned,
    string Model,
    double HeldOutError,
    double StepLimit,
    int Judged,
    int Suspect,
    ImmutableArray<SuspectStretch> Suspects,
    LastingShift? Shift);

/// <summary>Steps in a row that lie far from what was expected.</summary>
/// <param name="Start">Start of the first.</param>
/// <param name="End">End of the last.</param>
/// <param name="Steps">How many.</param>
/// <param name="Logged">Their mean as logged. [SI unit of the channel]</param>
/// <param name="Expected">Mean of what was expected. [SI unit of the channel]</param>
public sealed record SuspectStretch(OffsetDateTime Start, OffsetDateTime End, int Steps, double Logged, double Expected);

/// <summary>Days in a row on which a sensor reads otherwise than expected: a drift, or a sensor that was moved, or a house that changed.</summary>
/// <param name="From">Start of the first day on which it shows; it may have begun up to a day before.</param>
/// <param name="To">End of the last.</param>
/// <param name="Days">Days that show it.</param>
/// <param name="Part"><c>whole</c>, or <c>sunUp</c> or <c>sunDown</c> where only that part of the day shows it.</param>
/// <param name="Size">Logged less expected, median of the days, with 5 and 95 % of the held-out days around it. [SI unit of the channel]</param>
/// <param name="FirstDay">Size on the first day. [SI unit of the channel]</param>
/// <param name="LastDay">Size on the last day. [SI unit of the channel]</param>
public sealed record LastingShift(OffsetDateTime From, OffsetDateTime To, int Days, string Part, Estimate Size, double FirstDay, double LastDay);

/// <summary>A sensor that the learned check could not learn.</summary>
/// <param name="Channel">Channel name.</param>
/// <param name="Sensor">Sensor name; may be empty.</param>
/// <param name="Why">Why, in a sentence.</param>
public sealed record NotLearned(string Channel, string Sensor, string Why);
