namespace ClimateLens.HouseSimulator.Truth;

/// <summary>Risk hours by the simulator's own leaves, film and canopy air.</summary>
public static class TrueRisk
{
    private const double WetShare = 0.5, NearDewK = 1, ColdestC = 5, WarmestC = 30;

    /// <summary>Whether each hour has leaves wet for half of it, or a mean margin under 1 K, while the canopy's air is at 5 to 30 °C.</summary>
    /// <param name="run">The house.</param>
    /// <param name="fromMinute">First minute. [min]</param>
    /// <param name="untilMinute">End; hours that are not whole are left out. [min]</param>
    public static bool[] Hours(HouseRun run, int fromMinute, int untilMinute)
    {
        bool[] hours = new bool[(untilMinute - fromMinute) / 60];
        for (int i = 0; i < hours.Length; i++)
        {
            HouseMinute[] hour = run.Minutes[(fromMinute + (60 * i))..(fromMinute + (60 * (i + 1)))];
            bool wet = hour.Count(m => m.FilmMm > TruthWriter.WetFilmMm) >= WetShare * hour.Length;
            hours[i] = (wet || hour.Average(m => m.LeafMarginK) < NearDewK) && hour.Average(m => m.CanopyC) is >= ColdestC and <= WarmestC;
        }

        return hours;
    }

    /// <summary>Number of risk hours.</summary>
    /// <param name="run">The house.</param>
    /// <param name="fromMinute">First minute. [min]</param>
    /// <param name="untilMinute">End. [min]</param>
    public static int Count(HouseRun run, int fromMinute, int untilMinute) => Hours(run, fromMinute, untilMinute).Count(risk => risk);
}
