namespace ClimateLens.Science.Clock;

/// <summary>Where the warmest time of the day lies, from the daily wave of outside air temperature.</summary>
/// <param name="Days">Days behind it.</param>
/// <param name="LagMin">Crest of the wave after solar noon, -720 to 720. [min]</param>
/// <param name="AmplitudeK">Height of the mean wave over its mean. [K]</param>
public readonly record struct DailySwing(int Days, double LagMin, double AmplitudeK)
{
    /// <summary>
    /// Crest of the wave of 24 hours after solar noon at five weather stations (47 to 364 days each) on three continents, halfway
    /// between the earliest and the latest fortnight. [min]
    /// </summary>
    public const double UsualLagMin = 140;

    /// <summary>Half of the distance from the earliest fortnight (25 min) to the latest (262 min) of these stations, rounded up. [min]</summary>
    public const double ErrorMin = 120;

    /// <summary>Fewest days that are judged. [d]</summary>
    public const int FewestDays = 7;

    /// <summary>Fewest readings of a day.</summary>
    private const int FewestReadings = 18;

    /// <summary>The mean wave of all whole days whose neighbours are there too; null for fewer than <see cref="FewestDays"/>.</summary>
    /// <param name="utcMicros">Stamps, ascending. [µs after 1970-01-01 00:00 UTC]</param>
    /// <param name="temperatureC">Outside temperature, NaN where missing. [°C]</param>
    /// <param name="stepSeconds">Nominal step, above 0. [s]</param>
    /// <param name="toMiddleSeconds">From a stamp to the middle of what it labels. [s]</param>
    /// <param name="latitudeDeg">Latitude, -90 to 90, north positive. [°]</param>
    /// <param name="longitudeDeg">Longitude, -180 to 180, east positive. [°]</param>
    /// <remarks>
    /// <para><b>Method:</b> first Fourier coefficient of each day by solar time, less the trend between the means of the days beside it; averaged as vectors.</para>
    /// <para><b>Range:</b> places with a daily wave; fronts of one day are averaged out over seven or more. <b>Error:</b> <see cref="ErrorMin"/>.</para>
    /// </remarks>
    public static DailySwing? Of(
        ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> temperatureC, double stepSeconds, double toMiddleSeconds, double latitudeDeg, double longitudeDeg)
    {
        Guard.AboveUpTo(stepSeconds, 0, double.MaxValue, "s");
        LightCurve curve = LightCurve.Of(utcMicros, temperatureC, stepSeconds, toMiddleSeconds);
        SunNoons sun = new(latitudeDeg, longitudeDeg);
        (int Day, int From, int To, double Mean)[] days = [.. Whole(curve, sun)];
        double x = 0, y = 0;
        int count = 0;
        for (int i = 1; i + 1 < days.Length; i++)
        {
            if (days[i - 1].Day == days[i].Day - 1 && days[i + 1].Day == days[i].Day + 1 && double.IsFinite(sun.NoonMin(days[i].Day)))
            {
                (double dx, double dy) = Wave(curve, days[i], sun.NoonMin(days[i].Day), (days[i + 1].Mean - days[i - 1].Mean) / 2);
                (x, y, count) = (x + dx, y + dy, count + 1);
            }
        }

        return count < FewestDays ? null
            : new DailySwing(count, Math.Atan2(y, x) / (2 * Math.PI) * SunNoons.DayMin, Math.Sqrt((x * x) + (y * y)) / count);
    }

    private static IEnumerable<(int Day, int From, int To, double Mean)> Whole(LightCurve curve, SunNoons sun)
    {
        for (int from = 0; from < curve.Count;)
        {
            int day = sun.DayOf(curve.Minutes[from]), to = from;
            double sum = 0;
            while (to < curve.Count && sun.DayOf(curve.Minutes[to]) == day)
            {
                sum += curve.Values[to++];
            }

            double expected = SunNoons.DayMin / curve.StepMin;
            if (to - from >= Math.Max(FewestReadings, 0.8 * expected))
            {
                yield return (day, from, to, sum / (to - from));
            }

            from = to;
        }
    }

    private static (double X, double Y) Wave(LightCurve curve, (int Day, int From, int To, double Mean) day, double noonMin, double trendKPerDay)
    {
        double x = 0, y = 0;
        int count = day.To - day.From;
        double middle = (curve.Minutes[day.From] + curve.Minutes[day.To - 1]) / 2;
        for (int i = day.From; i < day.To; i++)
        {
            double angle = 2 * Math.PI * (curve.Minutes[i] - noonMin) / SunNoons.DayMin;
            double above = curve.Values[i] - day.Mean - (trendKPerDay * (curve.Minutes[i] - middle) / SunNoons.DayMin);
            x += 2 * above * Math.Cos(angle) / count;
            y += 2 * above * Math.Sin(angle) / count;
        }

        return (x, y);
    }
}
