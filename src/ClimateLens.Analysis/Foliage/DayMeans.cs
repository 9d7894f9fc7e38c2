using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Infection;
using NodaTime;

namespace ClimateLens.Analysis.Foliage;

/// <summary>Means and sums of local days; NaN where less than half of a day is known.</summary>
/// <param name="HumidityPct">Mean relative humidity by day. [%]</param>
/// <param name="RadiationJcm2">Sum of the sun outside by day. [J/cm²]</param>
/// <param name="FirstOfPeriod">Index of the period's first day.</param>
internal sealed record DayMeans(double[] HumidityPct, double[] RadiationJcm2, int FirstOfPeriod)
{
    /// <summary>Days.</summary>
    public int Count => HumidityPct.Length;

    /// <summary>The days of run-in and period.</summary>
    public static DayMeans Of(HousePeriod period)
    {
        double[] humidity = [.. period.Frame.Values(Derived.HumidityPct)];
        double[]? sun = UsedSeries.Of(period, "globalRadiation");
        int[] day = period.Foliage!.Day;
        int days = day[^1] + 1;
        double[] means = new double[days], sums = new double[days];
        for (int d = 0; d < days; d++)
        {
            int[] steps = [.. Enumerable.Range(0, day.Length).Where(i => day[i] == d)];
            means[d] = Mean([.. steps.Select(i => humidity[i])]);
            double mean = sun is null ? double.NaN : Mean([.. steps.Select(i => sun[i])]);
            sums[d] = mean * steps.Length * period.Frame.Axis.Step.TotalSeconds / 1e4; // 1 J/cm² is 1e4 J/m²
        }

        return new DayMeans(means, sums, day[Math.Min(period.FirstStep, day.Length - 1)]);
    }

    /// <summary>Every night that ends in the period with the day after it.</summary>
    public static PowderyMildewDay[] NightsAndDays(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        double[] humidity = [.. period.Frame.Values(Derived.HumidityPct)], temperature = [.. period.Frame.Values(Derived.TemperatureC)];
        LocalDate first = period.Input.Period.Start.InZone(axis.Zone).Date, end = period.Input.Period.End.InZone(axis.Zone).Date;
        List<PowderyMildewDay> days = [];
        for (LocalDate date = first; date < end; date = date.PlusDays(1))
        {
            if (period.Sun.Of(date.PlusDays(-1)).Sunset is not Instant dusk || period.Sun.Of(date).Sunrise is not Instant dawn || period.Sun.Of(date).Sunset is not Instant evening)
            {
                days.Add(new(double.NaN, double.NaN, double.NaN, double.NaN));
                continue;
            }

            double[] Between(double[] values, Instant from, Instant to) => values[Math.Clamp(axis.IndexOf(from), 0, values.Length)..Math.Clamp(axis.IndexOf(to), 0, values.Length)];
            double[] day = Between(temperature, dawn, evening);
            double highest = day.Any(double.IsFinite) ? day.Where(double.IsFinite).Max() : double.NaN;
            days.Add(new(Mean(Between(humidity, dusk, dawn)), Mean(Between(humidity, dawn, evening)), Mean(Between(temperature, dusk, evening)), highest));
        }

        return [.. days];
    }

    private static double Mean(double[] values)
    {
        double[] known = [.. values.Where(double.IsFinite)];
        return known.Length == 0 || 2 * known.Length < values.Length ? double.NaN : known.Average();
    }
}
