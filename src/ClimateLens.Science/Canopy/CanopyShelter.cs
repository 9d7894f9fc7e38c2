namespace ClimateLens.Science.Canopy;

/// <summary>How a closing canopy shelters its leaves from moving air.</summary>
/// <remarks>
/// <para><b>Formula:</b> closure <c>c = clamp((cover - 0.6)/0.4, 0, 1)</c>; air speed among leaves <c>u (1 - 0.5 c)</c>.</para>
/// <para><b>Source:</b> the ramp is a choice of this project, and so is the half that is left in a closed canopy. It lies between 0.3, half way down a field crop whose wind falls off
/// as <c>exp(-a (1 - z/h))</c> with a of 2 to 3 ([CIONCO65], from memory), and 0.75, at which a leaf 6 cm wide has the 275 s/m of a closed tomato crop under
/// glass ([VANTHOOR11], re-statement). <b>Error:</b> a factor of two: drying times in the dark change by a third.</para>
/// </remarks>
public static class CanopyShelter
{
    /// <summary>Cover from which leaves begin to shelter each other. [1]</summary>
    public const double OpenUpTo = 0.6;

    /// <summary>Share of the air speed left among the leaves of a closed canopy. [1]</summary>
    public const double ClosedAirShare = 0.5;

    /// <summary>How far a canopy has closed, 0 to 1. [1]</summary>
    /// <param name="cover">Ground cover, 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">The cover is impossible.</exception>
    public static double Closure(double cover) =>
        Math.Clamp((Guard.Within(cover, 0, 1, "(share)") - OpenUpTo) / (1 - OpenUpTo), 0, 1);

    /// <summary>Air speed among leaves over that above the crop, 0.5 to 1. [1]</summary>
    /// <param name="cover">Ground cover, 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">The cover is impossible.</exception>
    public static double AirSpeedShare(double cover) => 1 - ((1 - ClosedAirShare) * Closure(cover));
}
