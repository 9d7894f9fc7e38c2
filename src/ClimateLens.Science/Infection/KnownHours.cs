namespace ClimateLens.Science.Infection;

/// <summary>Hours in which something held, and hours of which it is known whether it did.</summary>
/// <param name="Hours">Hours in which it held. [h]</param>
/// <param name="Known">Hours known. [h]</param>
public readonly record struct KnownHours(double Hours, double Known);
