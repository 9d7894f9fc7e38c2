using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.Analysis.Comparison;

/// <summary>Two reviews of periods of one length, side by side: two houses at one time, or one house at two times.</summary>
/// <param name="First">One side.</param>
/// <param name="Second">The other.</param>
/// <param name="SameTime">Whether both have the same hours, and so the same weather where they stand together.</param>
/// <param name="Hours">Hours in which both have air.</param>
/// <param name="Differences">Means of both over these hours, and how they differ.</param>
/// <param name="RiskHours">How the risk hours differ.</param>
/// <param name="Sensors">Whether the sensors can be compared.</param>
/// <param name="Nights">Night by night.</param>
/// <param name="HourlyHumidityPct">Relative humidity of the first less the second, hour by hour of the period; null where either is not known. [%]</param>
public sealed record ComparisonReport(
    ComparedSide First,
    ComparedSide Second,
    bool SameTime,
    int Hours,
    ImmutableArray<MeanDifference> Differences,
    RiskDifference? RiskHours,
    ImmutableArray<SensorMatch> Sensors,
    ImmutableArray<NightPair> Nights,
    ImmutableArray<double?> HourlyHumidityPct);

/// <summary>A side of a comparison.</summary>
/// <param name="House">House id.</param>
/// <param name="Name">House name.</param>
/// <param name="Period">Its period.</param>
/// <param name="RiskHours">Its risk hours.</param>
/// <param name="Waterings">Waterings, or null when nothing tells of them.</param>
/// <param name="WettedLeaves">Those that wetted leaves.</param>
/// <param name="Late">Those of them that ended after the cut-off.</param>
/// <param name="Litres">Litres given, null unless every watering has its litres. [L]</param>
/// <param name="Cover">Ground cover at the end of the period.</param>
/// <param name="Causes">Shares of its risk hours; null where they cannot be told.</param>
/// <param name="WhyNoCauses">Why not; empty where they are told.</param>
public sealed record ComparedSide(
    string House, string Name, ReviewPeriod Period, Estimate? RiskHours, int? Waterings, int WettedLeaves, int Late, double? Litres, Estimate? Cover, ImmutableArray<Cause>? Causes, string WhyNoCauses);

/// <summary>A quantity of both sides over the hours in which both tell it.</summary>
/// <param name="Name"><c>airTemperatureC</c>, <c>relativeHumidityPct</c>, <c>vpdKPa</c>, <c>absoluteHumidityGm3</c> or <c>dewPointMarginK</c>.</param>
/// <param name="First">Mean of the first.</param>
/// <param name="Second">Mean of the second.</param>
/// <param name="Difference">First less second; the range is that of other days that could have come, by blocks of a day.</param>
/// <param name="SensorError">By how much the difference may be off through both sensors, half-width; null where their accuracy does not carry over.</param>
/// <param name="Verdict"><c>none</c>: the range holds zero; <c>withinSensors</c>: beyond chance, within what both sensors may be off; <c>beyondSensors</c>: beyond both; <c>maybeOffset</c>: beyond both, and the sensors part on nights alike by as much; <c>notKnown</c>.</param>
public sealed record MeanDifference(string Name, double First, double Second, Estimate Difference, double? SensorError, string Verdict);

/// <summary>Risk hours of the first less those of the second.</summary>
/// <param name="Difference">Difference over the hours in which both are known.</param>
/// <param name="ByChance">Its range by days that could have come otherwise: blocks of a day.</param>
/// <param name="BySensors">Its range by the errors of both reviews, taken as unrelated.</param>
/// <param name="Verdict">As of <see cref="MeanDifference"/>.</param>
public sealed record RiskDifference(double Difference, Estimate ByChance, Estimate BySensors, string Verdict)
{
    /// <summary>Hours in which the risk of both is known; only these count.</summary>
    public int Hours { get; init; }

    /// <summary>Risk hours of the first in them.</summary>
    public int First { get; init; }

    /// <summary>Of the second.</summary>
    public int Second { get; init; }
}

/// <summary>How two sensors of a kind read on nights in which both houses were about as warm and no leaves were watered.</summary>
/// <param name="Channel"><c>airTemperature</c> or <c>relativeHumidity</c>.</param>
/// <param name="Nights">Such nights.</param>
/// <param name="Offset">First less second on them, with its range by nights; null with fewer than three.</param>
/// <param name="JointAccuracy">What two such sensors may part by, half-width.</param>
/// <param name="Corrected">The period's difference less that offset; null without one.</param>
public sealed record SensorMatch(string Channel, int Nights, Estimate? Offset, double JointAccuracy, double? Corrected);

/// <summary>A night of both sides.</summary>
/// <param name="Evening">Local date on which it begins, on the first side.</param>
/// <param name="FirstRiskHours">Risk hours of the first in the hours known of both; null where these are less than half of the night.</param>
/// <param name="SecondRiskHours">Of the second.</param>
/// <param name="FirstHumidityPct">Mean relative humidity; null where not known. [%]</param>
/// <param name="SecondHumidityPct">Of the second. [%]</param>
/// <param name="FirstLeastMarginK">Least dew-point margin. [K]</param>
/// <param name="SecondLeastMarginK">Of the second. [K]</param>
public sealed record NightPair(
    LocalDate Evening, int? FirstRiskHours, int? SecondRiskHours, double? FirstHumidityPct, double? SecondHumidityPct, double? FirstLeastMarginK, double? SecondLeastMarginK)
{
    /// <summary>Hours of the night.</summary>
    public int Hours { get; init; }

    /// <summary>Those of them in which the risk of both is known.</summary>
    public int CommonHours { get; init; }
}
