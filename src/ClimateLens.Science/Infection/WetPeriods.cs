namespace ClimateLens.Science.Infection;

/// <summary>Wet periods out of wet and dry steps.</summary>
public static class WetPeriods
{
    /// <summary>Finds the wet periods of a stretch, in order.</summary>
    /// <param name="wet">1 for wet, 0 for dry, NaN for not known; one value a step.</param>
    /// <param name="temperatureC">Temperature that counts for infection; NaN for not known. [°C]</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 86400. [s]</param>
    /// <param name="rules">When a period ends.</param>
    /// <param name="periods">Receives the periods; half as many as there are steps, rounded up, is always room enough.</param>
    /// <returns>How many periods were found.</returns>
    /// <exception cref="ArgumentException">Columns differ in length, or there is no room for the periods.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rule or the step is impossible.</exception>
    /// <remarks>
    /// A step that is not known counts as dry for the break and is told as unknown within the period. A period that a gap or an end of the
    /// data touches is open. Allocates nothing.
    /// </remarks>
    public static int Find(
        ReadOnlySpan<double> wet, ReadOnlySpan<double> temperatureC, double stepSeconds, WetPeriodRules rules, Span<WetPeriod> periods)
    {
        Guard.SameLength(wet.Length, temperatureC.Length);
        double stepHours = Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, 86400, "s") / 3600;
        WetPeriodRules when = rules.Checked();
        int longestDry = (int)Math.Floor((when.LongestDryHours / stepHours) + 1e-9);
        int leastWet = (int)Math.Ceiling((when.LeastWetHours / stepHours) - 1e-9);
        int found = 0;
        for (int step = 0; step < wet.Length; step++)
        {
            if (wet[step] != 1)
            {
                continue;
            }

            WetPeriod period = From(wet, temperatureC, step, longestDry, stepHours, out int wetSteps);
            step = period.End - 1;
            if (wetSteps < leastWet)
            {
                continue;
            }

            if (found == periods.Length)
            {
                throw new ArgumentException("There is no room for all the periods.", nameof(periods));
            }

            periods[found++] = period;
        }

        return found;
    }

    private static WetPeriod From(
        ReadOnlySpan<double> wet, ReadOnlySpan<double> temperatureC, int start, int longestDry, double stepHours, out int wetSteps)
    {
        int end = start, unknown = 0, unknownSinceWet = 0, known = 0;
        double sum = 0;
        wetSteps = 0;
        for (int step = start; step < wet.Length && step - end <= longestDry; step++)
        {
            if (wet[step] == 1)
            {
                end = step + 1;
                wetSteps++;
                unknown += unknownSinceWet;
                unknownSinceWet = 0;
                double t = temperatureC[step];
                if (!double.IsNaN(t))
                {
                    sum += t;
                    known++;
                }
            }
            else if (double.IsNaN(wet[step]))
            {
                unknownSinceWet++;
            }
        }

        bool open = start == 0 || double.IsNaN(wet[start - 1]) || end == wet.Length || double.IsNaN(wet[end]);
        return new(start, end, wetSteps * stepHours, known > 0 ? sum / known : double.NaN, unknown * stepHours, open);
    }
}
