using System.Globalization;
using NodaTime;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>The times of a made export.</summary>
internal static class MakerClock
{
    private static readonly LocalDate[] Changes = [new(2024, 3, 31), new(2024, 10, 27), new(2025, 3, 30), new(2025, 11, 2), new(2025, 3, 9)];

    /// <summary>Instants in the order of the file; some files run over a change of the clock.</summary>
    public static IEnumerable<Instant> Instants(MakerStyle style)
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb[style.Zone];
        LocalDate day = style.OneIn(4) ? style.Pick(Changes).PlusDays(-style.Random.Next(3)) : new LocalDate(2024, 1, 1).PlusDays(style.Random.Next(700));
        Instant start = day.AtStartOfDayInZone(zone).ToInstant() + Duration.FromMinutes(style.Step * style.Random.Next(3));
        int count = style.Days * 1440 / style.Step;
        IEnumerable<Instant> instants = Enumerable.Range(0, count).Select(i => style.Floored ? Floored(start, i) : start + Duration.FromMinutes(i * style.Step));
        return style.NewestFirst ? instants.Reverse() : instants;
    }

    /// <summary>The cells of a time of the clock.</summary>
    public static string[] Cells(MakerStyle style, DateTime time)
    {
        MakerStamp stamp = style.Stamp;
        string[] cells = stamp.Write(time, style.Language, style.Mark);
        if (time.TimeOfDay == TimeSpan.Zero && style.LateMidnight)
        {
            return stamp.Late(style.Language, time)!;
        }

        if (time.TimeOfDay == TimeSpan.Zero && style.BareMidnight)
        {
            return cells.Length > 1 ? cells : [cells[0].Split(' ', 'T') is { Length: 2 } parts ? parts[0] : cells[0][..cells[0].LastIndexOf(' ')]];
        }

        return style.SwappedDates && time.Day <= 12 ? [time.ToString(stamp.Swapped!, CultureInfo.InvariantCulture)] : cells;
    }

    /// <summary>A logger whose step is a little short of five minutes and that cuts its stamps to whole minutes: 0:00, 0:04, 0:09, 0:15.</summary>
    private static Instant Floored(Instant start, int i)
    {
        long seconds = (long)Math.Round(i * 300.0) - (i % 3 == 0 ? 0 : 20);
        return start + Duration.FromSeconds(seconds / 60 * 60);
    }
}
