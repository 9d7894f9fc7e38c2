namespace ClimateLens.Science.Clock;

/// <summary>Holds the clock of a light sensor against the sun.</summary>
/// <remarks>
/// <para><b>Method:</b> of this project. Each day's light is cut off at a small share of a bright day's; its centroid is compared with true solar noon
/// [MEEUS98]. The share is the one, of those that the step allows, at which the days agree best. <b>Error:</b> docs/science/clock.md.</para>
/// </remarks>
public static class SunClock
{
    /// <summary>Longest step that is judged. [s]</summary>
    public const double LongestStepSeconds = 3600;

    /// <summary>Of two levels the one that gives this share of the other's days will do. [1]</summary>
    private const double EnoughDays = 0.8;

    /// <summary>Light below this is dark, and so is what the noise of the dark reaches. [share of a bright day]</summary>
    private const double LeastLight = 0.002;

    /// <summary>A darker day says little: its edges lie far inside the true ones. [share of a bright day]</summary>
    private const double Dullest = 0.05;

    // Low levels feel clouds least; with long steps they feel the step instead, since light comes within one.
    private static readonly double[] FineLevels = [0.005, 0.01, 0.02, 0.04], HalfHourLevels = [0.01, 0.02, 0.04], HourLevels = [0.08, 0.16];

    /// <summary>The days that can be judged, in time order.</summary>
    /// <param name="utcMicros">Stamps, ascending. [µs after 1970-01-01 00:00 UTC]</param>
    /// <param name="light">Readings in any unit that is proportional to light; NaN where missing.</param>
    /// <param name="stepSeconds">Nominal step, above 0; nothing is judged above <see cref="LongestStepSeconds"/>. [s]</param>
    /// <param name="toMiddleSeconds">From a stamp to the middle of what it labels: 0, or half a step to either side. [s]</param>
    /// <param name="latitudeDeg">Latitude, -90 to 90, north positive. [°]</param>
    /// <param name="longitudeDeg">Longitude, -180 to 180, east positive. [°]</param>
    public static LightDays Days(
        ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> light, double stepSeconds, double toMiddleSeconds, double latitudeDeg, double longitudeDeg)
    {
        Guard.AboveUpTo(stepSeconds, 0, double.MaxValue, "s");
        LightCurve curve = LightCurve.Of(utcMicros, light, stepSeconds, toMiddleSeconds);
        SunNoons sun = new(latitudeDeg, longitudeDeg);
        DaySlice[] slices = Slices(curve, sun);
        LightDays best = LightDays.None;
        foreach (double level in curve.StepMin > 30 ? HourLevels : curve.StepMin > 15 ? HalfHourLevels : FineLevels)
        {
            ClockDay[] days = Middles(curve, sun, slices, new LightBand(LeastLight, level, Dullest));
            bool better = days.Length >= EnoughDays * best.Days.Length && ClockScatter.DayToDayMin(days) < ClockScatter.DayToDayMin(best.Days);
            best = days.Length > 0 && (best.Days.Length == 0 || better) ? new LightDays(days, level) : best;
        }

        return best;
    }

    /// <summary>
    /// The days by their bright hours alone, between 20 and 40 % of a bright day: clouds move them by half an hour and more, but lamps and dusk do not.
    /// To hold a fault against that was seen at the edges of the day. Arguments as for <see cref="Days"/>.
    /// </summary>
    public static ClockDay[] BrightHours(
        ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> light, double stepSeconds, double toMiddleSeconds, double latitudeDeg, double longitudeDeg)
    {
        Guard.AboveUpTo(stepSeconds, 0, double.MaxValue, "s");
        LightCurve curve = LightCurve.Of(utcMicros, light, stepSeconds, toMiddleSeconds);
        SunNoons sun = new(latitudeDeg, longitudeDeg);
        return Middles(curve, sun, Slices(curve, sun), new LightBand(0.2, 0.2, 0.5));
    }

    private static DaySlice[] Slices(LightCurve curve, SunNoons sun)
        => curve.StepMin * 60 <= LongestStepSeconds && LightPhase.OffsetMin(curve, sun) is double around ? DaySlice.Cut(curve, sun, around) : [];

    private static ClockDay[] Middles(LightCurve curve, SunNoons sun, DaySlice[] slices, LightBand band)
        => [.. slices.Select(slice => LightMiddle.Of(curve, slice, sun, band)).OfType<ClockDay>()];
}
