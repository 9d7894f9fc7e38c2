namespace ClimateLens.Analysis.Learned;

/// <summary>A sensor that read otherwise than expected for days.</summary>
/// <param name="Fit">Which sensor.</param>
/// <param name="Part">Part of the day in which it did.</param>
/// <param name="FirstDay">First day.</param>
/// <param name="LastDay">Last day.</param>
/// <param name="Sizes">Logged less expected of each day with enough values, less what is usual. [SI unit of the channel]</param>
/// <param name="Score">Mean size in units of the usual error of a step: who is named first. [1]</param>
internal sealed record FoundShift(int Fit, DayPart Part, int FirstDay, int LastDay, double[] Sizes, double Score);
