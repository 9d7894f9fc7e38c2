namespace ClimateLens.Science.Wetness;

/// <summary>States of hours out of states of steps.</summary>
public static class HourStates
{
    /// <summary>An hour is wet where at least half of its known steps are, and not known where fewer than half are known.</summary>
    /// <param name="wet">1 for wet, 0 for dry, NaN for not known; the first step begins an hour.</param>
    /// <param name="stepsPerHour">Steps in an hour, 1 or more.</param>
    /// <param name="hours">Receives the state of each whole hour.</param>
    /// <exception cref="ArgumentException">There is not one place for each whole hour.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are no steps in an hour.</exception>
    /// <remarks>Allocates nothing.</remarks>
    public static void Of(ReadOnlySpan<double> wet, int stepsPerHour, Span<double> hours)
    {
        Guard.Within(stepsPerHour, 1, 3600, "steps");
        Guard.SameLength(wet.Length / stepsPerHour, hours.Length);
        for (int hour = 0; hour < hours.Length; hour++)
        {
            int known = 0, wetSteps = 0;
            foreach (double state in wet.Slice(hour * stepsPerHour, stepsPerHour))
            {
                known += double.IsNaN(state) ? 0 : 1;
                wetSteps += state == 1 ? 1 : 0;
            }

            hours[hour] = 2 * known < stepsPerHour ? double.NaN : 2 * wetSteps >= known ? 1 : 0;
        }
    }
}
