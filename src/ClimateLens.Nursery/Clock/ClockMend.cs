using ClimateLens.Nursery.Languages;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Clock;

/// <summary>What a wrong clock looks like, and the key that mends it.</summary>
/// <param name="LooksAs">Completes "it looks as if …"; empty when nothing is to be said.</param>
/// <param name="Mend">What to do.</param>
internal sealed record ClockMend(string LooksAs, string Mend)
{
    private const int HalfDayMin = 720;

    /// <summary>An offset known this well may be one of half an hour; else only whole hours are thought of. [min]</summary>
    private const double SharpMin = 15;

    /// <summary>How near a sharp offset lies to a round one. [min]</summary>
    private const double NearMin = 10;

    /// <summary>Offsets from UTC in use that are no whole hours. [min]</summary>
    private static readonly int[] HalfHours = [-570, -210, -150, 210, 270, 330, 345, 390, 525, 570, 630, 765];

    private static readonly OffsetPattern Offsets = OffsetPattern.CreateWithInvariantCulture("+HH:mm");

    /// <summary>The likeliest cause of an offset.</summary>
    /// <param name="place">Where the clock stands and how its stamps were read.</param>
    /// <param name="spell">The faulty spell.</param>
    /// <param name="right">A spell in which the clock ran right, or null.</param>
    public static ClockMend Of(ClockPlace place, ClockSpell spell, ClockSpell? right)
    {
        // What house, sky and stamps do is the same in both spells, so that their difference is the sharper figure.
        double offset = spell.OffsetMin - (right?.OffsetMin ?? 0);
        bool sharp = right is not null || spell.ErrorMin <= SharpMin;
        int grid = sharp ? 30 : 60;
        int whole = (int)Math.Round(offset / grid) * grid;
        bool rounds = whole != 0 && Math.Abs(offset - whole) <= (sharp ? NearMin : Math.Min(30, spell.ErrorMin));
        return LostSign(place, spell) is ClockMend sign ? sign
            : rounds && Math.Abs(whole) == HalfDayMin ? HalfDay
            : rounds ? Zone(place, spell, whole, right)
            : Set(right is not null);
    }

    private static ClockMend HalfDay => new(
        Phrase.Of("AM and PM were mixed up"),
        Phrase.Of("Look whether the file writes hours from 1 to 12 with AM or PM: then format under [export.time] needs hh and a in place of HH. If not, set the logger's clock by twelve hours."));

    private static ClockMend Zone(ClockPlace place, ClockSpell spell, int wholeMin, ClockSpell? right)
    {
        DateTimeZone stamps = place.StampZone, own = place.Nursery.Zone;
        Instant at = stamps.AtStartOfDay(spell.To).ToInstant();
        Offset implied = stamps.GetUtcOffset(at) + Offset.FromSeconds(wholeMin * 60);
        if (right is not null && Changes(stamps, at) && implied == stamps.GetUtcOffset(stamps.AtStartOfDay(right.To).ToInstant()))
        {
            return new(Phrase.Of($"the logger's clock is never changed and the nursery file says it changes ({stamps.Id})"), Phrase.Of($"Write timeZone = \"{Offsets.Format(implied)}\" under [export.time]."));
        }

        bool summer = own.GetZoneInterval(at).Savings != Offset.Zero;
        if (Changes(stamps, at) && stamps.GetZoneInterval(at).Savings != Offset.Zero && implied == stamps.GetZoneInterval(at).StandardOffset)
        {
            return new(Phrase.Of($"the logger keeps winter time all year and the nursery file says it changes ({stamps.Id})"), Phrase.Of($"Write timeZone = \"{Offsets.Format(implied)}\" under [export.time]."));
        }

        if (!stamps.Equals(own) && implied == own.GetUtcOffset(at))
        {
            string looks = !Changes(stamps, at) && summer ? Phrase.Of("the logger changed to summer time and the nursery file says it does not") : Phrase.Of($"the stamps are in the time of the nursery ({own.Id}) and the nursery file says otherwise");
            return new(looks, Phrase.Of($"Take timeZone out under [export.time], or write timeZone = \"{own.Id}\" there."));
        }

        if (right is not null || (implied.Seconds % 3600 != 0 && !HalfHours.Contains(implied.Seconds / 60)))
        {
            return Set(right is not null);
        }

        return implied == Offset.Zero
            ? new(Phrase.Of("the stamps are UTC"), Phrase.Of("Write timeZone = \"UTC\" under [export.time]."))
            : new(Phrase.Of($"the stamps are {Named(implied)}"), Phrase.Of($"If the logger always runs so, write timeZone = \"{Offsets.Format(implied)}\" under [export.time]; if its clock was set wrong, set it right."));
    }

    private static ClockMend Set(bool partly) => new(
        "",
        partly ? Phrase.Of("Set the logger's clock right. Give the rows of that time an export of their own with their own timeZone under [export.time], such as \"+01:00\", if their hours matter.")
            : Phrase.Of("Set the logger's clock right, and look at timeZone under [export.time] and at the longitude in the nursery file."));

    /// <summary>A longitude that cannot belong to the nursery's zone, while the other sign can and would put the clock right.</summary>
    private static ClockMend? LostSign(ClockPlace place, ClockSpell spell)
    {
        double longitude = place.Nursery.LongitudeDeg;
        double zoneDeg = place.Nursery.Zone.GetZoneInterval(place.StampZone.AtStartOfDay(spell.To).ToInstant()).StandardOffset.Seconds / 240.0;
        double offset = Wrapped(spell.OffsetMin - (8 * longitude));
        bool mends = Math.Abs(longitude) > 4 && Math.Abs(offset) <= Math.Max(ClockLimits.LeastFaultMin, spell.ErrorMin);
        return mends && Math.Abs(-longitude - zoneDeg) < Math.Abs(longitude - zoneDeg)
            ? new(Phrase.Of("the longitude has the wrong sign"), Phrase.Of($"Write longitude = {ClockWords.Exact(-longitude)} under [nursery]."))
            : null;
    }

    private static double Wrapped(double minutes) => minutes - (1440 * Math.Round(minutes / 1440));

    private static bool Changes(DateTimeZone zone, Instant at)
        => zone.GetZoneIntervals(at - Duration.FromDays(366), at + Duration.FromDays(366)).Any(i => i.Savings != Offset.Zero);

    private static string Named(Offset offset) => $"UTC{Offsets.Format(offset)}";
}
