using ClimateLens.Analysis.Time;
using ClimateLens.Analysis.WateringEvents;
using NodaTime;

namespace ClimateLens.Analysis.Outlook;

/// <summary>The watering cut-off of the coming day, if it dries as the seven days before it did.</summary>
/// <param name="Latest">Latest finish by the middle one of these days; null where on most of them no finish let leaves dry.</param>
/// <param name="Earliest">By the one that dried worst; null where no finish let leaves dry on it.</param>
/// <param name="Days">Days that it comes from.</param>
/// <param name="MeanMissHours">Mean absolute difference of such a guess to the day's own cut-off on the days of the period; null where fewer than three can be compared. [h]</param>
/// <remarks><b>Method:</b> a cut-off counts by its hours before sunset; that of the coming day is the median of the seven before. A choice of this project; persistence is all that can be had without a weather forecast.</remarks>
internal sealed record DryingAhead(Instant? Latest, Instant? Earliest, int Days, double? MeanMissHours)
{
    private const int Before = 7, FewestDays = 4, FewestCompared = 3;

    /// <summary>Looks ahead to a day; null with too few days before it.</summary>
    /// <param name="cutOffs">Cut-offs up to the day before.</param>
    /// <param name="sun">The sun.</param>
    /// <param name="day">The coming day.</param>
    public static DryingAhead? Of(CutOffs cutOffs, SunCalendar sun, LocalDate day)
    {
        double[] hours = HoursBefore(cutOffs, sun, day);
        if (hours.Length < FewestDays || sun.Of(day).Sunset is not Instant sunset)
        {
            return null;
        }

        double[] misses =
        [
            .. Enumerable.Range(1, Before).Select(n => day.PlusDays(-n)).Select(d => Hours(cutOffs, sun, d) - Middle(HoursBefore(cutOffs, sun, d)))
                .OfType<double>().Where(double.IsFinite).Select(Math.Abs),
        ];
        return new DryingAhead(At(sunset, Middle(hours)), At(sunset, hours.Max()), hours.Length, misses.Length < FewestCompared ? null : misses.Average());
    }

    private static double[] HoursBefore(CutOffs cutOffs, SunCalendar sun, LocalDate day)
        => [.. Enumerable.Range(1, Before).Select(n => Hours(cutOffs, sun, day.PlusDays(-n))).OfType<double>().Order()];

    /// <summary>From the cut-off of a day to its sunset; without end where no finish lets leaves dry, null where it is not known. [h]</summary>
    private static double? Hours(CutOffs cutOffs, SunCalendar sun, LocalDate day)
        => cutOffs.Of(day) is not { } cutOff || sun.Of(day).Sunset is not Instant sunset ? null
            : cutOff.Latest is Instant latest ? (sunset - latest).TotalHours : double.PositiveInfinity;

    private static double Middle(double[] ordered) => ordered.Length == 0 ? double.NaN : ordered[ordered.Length / 2];

    private static Instant? At(Instant sunset, double hoursBefore) => double.IsFinite(hoursBefore) ? sunset - Duration.FromHours(hoursBefore) : null;
}
