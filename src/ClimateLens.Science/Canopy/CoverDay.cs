namespace ClimateLens.Science.Canopy;

/// <summary>Ground cover on a day.</summary>
/// <param name="Day">Days after the start. [d]</param>
/// <param name="Cover">Cover of the best curve, 0 to 1. [1]</param>
/// <param name="Low">5 % of the draws lie below. [1]</param>
/// <param name="High">5 % of the draws lie above. [1]</param>
public readonly record struct CoverDay(double Day, double Cover, double Low, double High);
