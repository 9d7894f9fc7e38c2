namespace ClimateLens.Science.Clock;

/// <summary>One day of a light sensor against the sun.</summary>
/// <param name="NoonUnixSeconds">True solar noon of the day that the stamps claim. [s after 1970-01-01 00:00 UTC]</param>
/// <param name="OffsetMin">Middle of the day's light by the stamps less solar noon; above 0 the clock runs ahead. [min]</param>
/// <param name="LitHours">How long it was light, at the level at which the middle was taken. [h]</param>
/// <param name="DaylightHours">Sunrise to sunset by the almanac; 0 in polar night, 24 in polar day. [h]</param>
/// <param name="IsSwitched">Whether light came out of the dark, or went into it, in one step, as it does with lamps and blackout screens and never with the sun.</param>
public readonly record struct ClockDay(double NoonUnixSeconds, double OffsetMin, double LitHours, double DaylightHours, bool IsSwitched);

/// <summary>The days of a light sensor that could be judged.</summary>
/// <param name="Days">In time order.</param>
/// <param name="Level">Share of a bright day's light at which light was told from dark. [1]</param>
public sealed record LightDays(ClockDay[] Days, double Level)
{
    /// <summary>No day.</summary>
    public static LightDays None { get; } = new([], 0);
}
