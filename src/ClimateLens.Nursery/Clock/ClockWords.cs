using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Clock;
using NodaTime;

namespace ClimateLens.Nursery.Clock;

/// <summary>What is said of a clock, in one manner for pages, sheets and messages.</summary>
internal static class ClockWords
{
    /// <summary>It is not known, and why.</summary>
    public static ClockCheck NotKnown(string why) => new(ClockVerdict.NotKnown, "", "", 0, why, "");

    /// <summary>What the stamps alone tell.</summary>
    public static ClockCheck Habit(ClockVerdict verdict, ClockPlace place) => verdict == ClockVerdict.HalfDay
        ? new(verdict, "", "", 0, Phrase.Of($"All rows lie between 01:00 and 12:59 of the day: AM and PM were lost ({place.StampZone.Id})."), Phrase.Of("If the file has AM or PM, write hh in place of HH and a where it stands in format under [export.time]; else set the export to 24 hours."))
        : new(verdict, "", "", 0, Phrase.Of("The days lie weeks apart, none after the 12th of its month, and follow each other with day and month swapped."), Phrase.Of("Write MM where dd stands, and dd where MM stands, in format under [export.time]."));

    /// <summary>What light tells.</summary>
    public static ClockCheck Light(ClockPlace place, ColumnKey key, int days, ImmutableArray<ClockSpell> spells, ClockDrift? drift)
    {
        ClockSpell last = spells[^1];
        string by = Phrase.Of($"{Count(days, "day")} by {Label(key)}");
        if (Gains(drift, last) is string gains && (Math.Abs(drift!.Value.MinPerWeek) - drift.Value.ErrorMinPerWeek) * Weeks(last) > ClockLimits.LeastFaultMin)
        {
            return new(ClockVerdict.Drifting, key.Channel, key.Sensor, days, Phrase.Of($"This clock {gains} ({by}); about {Offset(EndMin(last, drift.Value))} at the end."), Phrase.Of("Set the logger's clock right now and each month, or let it fetch the time from a network."));
        }

        string slowly = Gains(drift, last) is string slow ? Phrase.Of($" It {slow}.") : "";
        return spells.LastOrDefault(s => s.IsFault) is ClockSpell fault
            ? Wrong(place, key, days, spells, fault, by, slowly)
            : new(ClockVerdict.Right, key.Channel, key.Sensor, days, Phrase.Of($"This clock agrees with the sun: the middle of the light lies {Plain(Math.Abs(last.OffsetMin))} ± {Plain(last.ErrorMin)} min {(last.OffsetMin < 0 ? Phrase.Of("before") : Phrase.Of("after"))} solar noon ({by}).{slowly}"), "");
    }

    /// <summary>A right clock that lies half a long step off, while the nursery file does not say what a stamp names.</summary>
    public static string HalfStep(ClockCheck check, ReadingBatch batch, double offsetMin)
    {
        double half = batch.StepSeconds / 120.0;
        bool fits = check.Verdict == ClockVerdict.Right && batch.StampSide == StampSide.Instant && half >= 15 && Math.Abs(Math.Abs(offsetMin) - half) < half / 2;
        return !fits ? "" : offsetMin > 0
            ? Phrase.Of(" That is about half a step: if a stamp names the end of its interval, say so in the export with stamps = \"intervalEnd\".")
            : Phrase.Of(" That is about half a step: if a stamp names the start of its interval, say so in the export with stamps = \"intervalStart\".");
    }

    /// <summary>What the swing of outside temperature tells.</summary>
    public static ClockCheck Swing(ClockPlace place, ColumnKey key, ClockSpell spell, string whyNotLight)
    {
        string limit = Phrase.Of($"by outside temperature only faults of more than {Plain(ClockLimits.TemperatureFaultMin / 60)} h are seen");
        if (!spell.IsFault)
        {
            return new(ClockVerdict.Right, key.Channel, key.Sensor, spell.Days, Phrase.Of($"{whyNotLight}This clock shows no large fault: {limit} ({Count(spell.Days, "day")})."), "");
        }

        ClockMend mend = ClockMend.Of(place, spell, right: null);
        return new(ClockVerdict.Wrong, key.Channel, key.Sensor, spell.Days, Phrase.Of($"{whyNotLight}By the daily swing of outside temperature this clock runs about {Offset(spell.OffsetMin)}, give or take {Plain(spell.ErrorMin / 60)} h ({Count(spell.Days, "day")})."), mend.Mend);
    }

    /// <summary>"58 minutes ahead", "5 h 2 min behind".</summary>
    public static string Offset(double minutes)
    {
        int whole = (int)Math.Round(Math.Abs(minutes));
        string length = whole < 100 ? Count(whole, "minute") : $"{Plain(whole / 60)} h {Plain(whole % 60)} min";
        return minutes < 0 ? Phrase.Of($"{length} behind") : Phrase.Of($"{length} ahead");
    }

    /// <summary>A channel inside a sentence, with its sensor.</summary>
    public static string Label(ColumnKey key)
    {
        string label = ChannelCatalogue.Get(key.Channel).Label;
        return char.ToLowerInvariant(label[0]) + label[1..] + (key.Sensor.Length > 0 ? $" \"{key.Sensor}\"" : "");
    }

    /// <summary>The first letter in upper case.</summary>
    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>"9.5 h".</summary>
    public static string Hours(double hours) => Phrase.Of($"{Math.Round(hours, 1):0.0} h");

    /// <summary>A number without needless decimals, one at most under ten.</summary>
    public static string Plain(double value)
        => Language.Current.Number(Math.Round(value, Math.Abs(value) < 1 ? 1 : 0, MidpointRounding.AwayFromZero).ToString("0.######", CultureInfo.InvariantCulture));

    /// <summary>A figure as it goes into the nursery file.</summary>
    public static string Exact(double value) => value.ToString("0.##########", CultureInfo.InvariantCulture);

    /// <summary>"1 day", "14 days".</summary>
    public static string Count(int count, string noun) => Phrase.Count(count, noun, noun + "s");

    /// <summary>"26 March 2025".</summary>
    public static string Day(LocalDate date) => TimeWords.Date(date);

    private static ClockCheck Wrong(ClockPlace place, ColumnKey key, int days, ImmutableArray<ClockSpell> spells, ClockSpell fault, string by, string slowly)
    {
        // The spell in which it ran right carries the same house, sky and stamps: the difference is the clock's own.
        ClockSpell? right = spells.LastOrDefault(s => !s.IsFault);
        ClockMend mend = ClockMend.Of(place, fault, right);
        string looks = mend.LooksAs.Length > 0 ? Phrase.Of($": it looks as if {mend.LooksAs}") : "";
        return new(ClockVerdict.Wrong, key.Channel, key.Sensor, days, Phrase.Of($"{When(spells, fault, fault.OffsetMin - (right?.OffsetMin ?? 0))}{looks} (± {Plain(fault.ErrorMin)} min, {by}).{slowly}"), mend.Mend);
    }

    private static string When(ImmutableArray<ClockSpell> spells, ClockSpell fault, double offsetMin)
    {
        int at = spells.IndexOf(fault);
        string offset = Offset(offsetMin);
        return (at > 0, at < spells.Length - 1) switch
        {
            (false, false) => Phrase.Of($"This clock runs {offset} on all days that could be judged"),
            (true, false) => Phrase.Of($"This clock runs {offset} since {Day(fault.From)}"),
            (false, true) => Phrase.Of($"This clock ran {offset} until {Day(fault.To)}"),
            _ => Phrase.Of($"This clock ran {offset} from {Day(fault.From)} to {Day(fault.To)}"),
        };
    }

    private static string? Gains(ClockDrift? drift, ClockSpell last)
    {
        if (drift is not ClockDrift d || last.Days < ClockDrift.FewestDays || Math.Abs(d.MinPerWeek) - d.ErrorMinPerWeek < ClockLimits.LeastDriftMinPerWeek)
        {
            return null;
        }

        return Phrase.Of($"{(d.MinPerWeek < 0 ? Phrase.Of("loses") : Phrase.Of("gains"))} about {Plain(Math.Abs(d.MinPerWeek))} ± {Plain(d.ErrorMinPerWeek)} minutes a week");
    }

    private static double Weeks(ClockSpell spell) => (Period.DaysBetween(spell.From, spell.To) + 1) / 7.0;

    private static double EndMin(ClockSpell spell, ClockDrift drift) => spell.OffsetMin + (drift.MinPerWeek * Weeks(spell) / 2);
}
