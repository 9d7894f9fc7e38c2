namespace ClimateLens.Science.Infection;

/// <summary>Plain limits against grey mould that advisers publish; a second opinion beside an index.</summary>
/// <remarks>
/// <b>Error:</b> none of the sources states how often disease followed or failed to follow; they are rules to stay clear of, not probabilities.
/// </remarks>
public static class GrowerLimits
{
    /// <summary>Advice is to keep humidity below. [%] Source: [MSUE].</summary>
    public const double AdvisedHumidityPct = 85;

    /// <summary>Humidity from which leaves are often taken as wet. [%] Source: [SENTELHAS08].</summary>
    public const double WetHumidityPct = 90;

    /// <summary>Advice is to keep plants wet for less than this in any 24 hours. [h] Source: [MSUE].</summary>
    public const double WetHoursInADay = 6;

    private const int Day = 86400;

    /// <summary>Hours at or above a limit, and hours known.</summary>
    /// <param name="humidityPct">Relative humidity; NaN for not known. [%]</param>
    /// <param name="limitPct">The limit, 0 to 100. [%]</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 86400. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">The limit or the step is impossible.</exception>
    public static KnownHours HoursFrom(ReadOnlySpan<double> humidityPct, double limitPct, double stepSeconds)
    {
        double limit = Guard.Within(Guard.Finite(limitPct), 0, 100, "%");
        double stepHours = Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, Day, "s") / 3600;
        int above = 0, known = 0;
        foreach (double humidity in humidityPct)
        {
            known += double.IsNaN(humidity) ? 0 : 1;
            above += humidity >= limit ? 1 : 0;
        }

        return new(above * stepHours, known * stepHours);
    }

    /// <summary>Wet hours within the 24 hours that end with each step: at least and at most.</summary>
    /// <param name="wet">1 for wet, 0 for dry, NaN for not known.</param>
    /// <param name="stepSeconds">Length of a step; 24 hours must be a whole number of them. [s]</param>
    /// <param name="least">Receives the hours known to be wet. [h]</param>
    /// <param name="most">Receives those and the hours not known; time before the first step is not known. [h]</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The step does not divide a day.</exception>
    /// <remarks>The limit is passed where <paramref name="least"/> is <see cref="WetHoursInADay"/> or more, and surely kept where
    /// <paramref name="most"/> is less. Allocates nothing.</remarks>
    public static void WetWithinADay(ReadOnlySpan<double> wet, double stepSeconds, Span<double> least, Span<double> most)
    {
        Guard.SameLength(wet.Length, least.Length);
        Guard.SameLength(wet.Length, most.Length);
        int steps = (int)Math.Round(Day / Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, Day, "s"));
        Guard.Within(steps * stepSeconds, Day - 1e-6, Day + 1e-6, "s (steps of a day)", nameof(stepSeconds));
        double stepHours = stepSeconds / 3600;
        int wetSteps = 0, drySteps = 0;
        for (int step = 0; step < wet.Length; step++)
        {
            wetSteps += wet[step] == 1 ? 1 : 0;
            drySteps += wet[step] == 0 ? 1 : 0;
            if (step >= steps)
            {
                wetSteps -= wet[step - steps] == 1 ? 1 : 0;
                drySteps -= wet[step - steps] == 0 ? 1 : 0;
            }

            least[step] = wetSteps * stepHours;
            most[step] = (steps - drySteps) * stepHours;
        }
    }
}
