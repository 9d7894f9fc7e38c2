namespace ClimateLens.Science.Sun;

/// <summary>Sunrise, solar noon and sunset of one civil date at one place, in minutes after 00:00 UTC of that date.</summary>
/// <param name="SunriseUtcMinutes">Upper limb on the horizon, before noon; may be below 0; null when there is none. [min]</param>
/// <param name="SunsetUtcMinutes">Upper limb on the horizon, after noon; may pass 1440; null when there is none. [min]</param>
/// <param name="SolarNoonUtcMinutes">Sun on the meridian. [min]</param>
/// <param name="Case">Whether the sun rises and sets, stays up or stays down.</param>
public readonly record struct SunDay(
    double? SunriseUtcMinutes, double? SunsetUtcMinutes, double SolarNoonUtcMinutes, SunCase Case);
