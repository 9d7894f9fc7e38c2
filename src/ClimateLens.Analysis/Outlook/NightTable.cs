using ClimateLens.Analysis.Time;
using NodaTime;

namespace ClimateLens.Analysis.Outlook;

/// <summary>The nights of a house, each with its risk hours and with what was known at the midnight before the day that it ends.</summary>
internal sealed class NightTable
{
    /// <summary>Column of the risk hours from sunset to sunrise; NaN for a night to come. [h]</summary>
    public const int Target = 0;

    /// <summary>A table of nights.</summary>
    /// <param name="dates">Local date on which each begins, in order.</param>
    /// <param name="columns">The target, what was known before, and last how long each night is.</param>
    public NightTable(LocalDate[] dates, double[][] columns) => (Dates, Columns) = (dates, columns);

    /// <summary>Local date on which each night begins; the last one is the night to come.</summary>
    public LocalDate[] Dates { get; }

    /// <summary>The target, then what was known before.</summary>
    public double[][] Columns { get; }

    /// <summary>Number of nights.</summary>
    public int Count => Dates.Length;

    /// <summary>The nights from the third day on up to the first that begins after the data end; the last is to be foretold. Empty in polar day or night.</summary>
    public static NightTable Of(HourlyHouse hourly, DateTimeZone zone, double latitudeDeg, double longitudeDeg)
    {
        SunCalendar sun = new(hourly.Start, hourly.End + Duration.FromDays(2), zone, latitudeDeg, longitudeDeg);
        List<LocalDate> dates = [];
        List<double[]> rows = [];
        LocalDate last = hourly.End.InZone(zone).Date;
        for (LocalDate date = hourly.Start.InZone(zone).Date.PlusDays(2); date <= last; date = date.PlusDays(1))
        {
            if (sun.Of(date).Sunset is Instant sunset && sun.Of(date.PlusDays(1)).Sunrise is Instant sunrise && sunrise > sunset)
            {
                dates.Add(date);
                rows.Add(Row(hourly, zone.AtStartOfDay(date).ToInstant(), sunset, sunrise));
            }
        }

        double[][] columns = rows.Count == 0 ? [] : [.. Enumerable.Range(0, rows[0].Length).Select(c => rows.Select(r => r[c]).ToArray())];
        return new NightTable([.. dates], columns);
    }

    /// <summary>Risk hours of the night, then: of the day and of the night before, margin, humidity inside and out, temperature outside, sun, cover, water on leaves, and how long the night is.</summary>
    private static double[] Row(HourlyHouse hourly, Instant midnight, Instant sunset, Instant sunrise)
    {
        Instant day = midnight - Duration.FromDays(1), evening = midnight - Duration.FromHours(6);
        return
        [
            hourly.Sum(HourlyColumn.Risk, sunset, sunrise),
            hourly.Sum(HourlyColumn.Risk, day, midnight),
            hourly.Sum(HourlyColumn.Risk, evening, midnight),
            hourly.Mean(HourlyColumn.MarginK, day, midnight),
            hourly.Mean(HourlyColumn.MarginK, evening, midnight),
            hourly.Mean(HourlyColumn.HumidityGm3, evening, midnight),
            hourly.Mean(HourlyColumn.OutsideGm3, evening, midnight),
            hourly.Mean(HourlyColumn.OutsideC, evening, midnight),
            hourly.Mean(HourlyColumn.OutsideC, day, midnight),
            hourly.Mean(HourlyColumn.SunWm2, day, midnight),
            hourly.Mean(HourlyColumn.Cover, day, midnight),
            hourly.Mean(HourlyColumn.LeafWetted, day, midnight),
            (sunrise - sunset).TotalHours,
        ];
    }
}
