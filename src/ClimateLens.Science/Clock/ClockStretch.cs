namespace ClimateLens.Science.Clock;

/// <summary>Days in a row in which a clock ran alike.</summary>
/// <param name="First">Index of its first day.</param>
/// <param name="Count">Number of days.</param>
/// <param name="OffsetMin">Median offset from the sun; above 0 ahead. [min]</param>
/// <param name="ErrorMin">Half-width of the range that holds the true median nineteen times in twenty, by the scatter of the days alone. [min]</param>
public readonly record struct ClockStretch(int First, int Count, double OffsetMin, double ErrorMin);
