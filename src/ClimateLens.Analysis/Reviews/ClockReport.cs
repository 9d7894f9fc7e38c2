using ClimateLens.Nursery.Clock;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The clock of one source.</summary>
/// <param name="House">House of the source, or "nursery".</param>
/// <param name="Source">Export name.</param>
/// <param name="File">File over whose whole length it was seen; empty where it was seen over the period and the run-in.</param>
/// <param name="ConcernsPeriod">Whether it runs wrong in the period itself.</param>
/// <param name="Check">What it looks like.</param>
public sealed record ClockReport(string House, string Source, string File, bool ConcernsPeriod, ClockCheck Check);
