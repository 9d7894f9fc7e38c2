namespace ClimateLens.Science.Infection;

/// <summary>A stretch in which foliage was wet, short dry breaks included.</summary>
/// <param name="Start">First wet step.</param>
/// <param name="End">Step after the last wet step.</param>
/// <param name="WetHours">Hours wet, breaks left out. [h]</param>
/// <param name="MeanTemperatureC">Mean temperature of the wet steps; NaN when none is known. [°C]</param>
/// <param name="UnknownHours">Hours within it of which it is not known whether they were wet. [h]</param>
/// <param name="Open">Whether the data begin or end within it, so that it may be longer than told.</param>
public readonly record struct WetPeriod(
    int Start, int End, double WetHours, double MeanTemperatureC, double UnknownHours, bool Open);
