using System.Collections.Immutable;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Clock;

namespace ClimateLens.Nursery.Clock;

/// <summary>Judges a clock by one light sensor.</summary>
internal static class LightClock
{
    private const string Outside = "globalRadiation";

    /// <summary>A true fault shows in the bright hours too, in this share of it at least: asymmetric shade takes the rest. [1]</summary>
    private const double SupportedShare = 0.5;

    /// <summary>Of smaller offsets, which clouds alone may give the bright hours, this share. [min; 1]</summary>
    private const double SmallMin = 45, SmallShare = 0.75;

    /// <summary>What the sensor tells.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="batch">Its source, with its step.</param>
    /// <param name="key">Its column.</param>
    /// <param name="values">Its readings, NaN where missing or impossible.</param>
    /// <param name="systematicMin">What sky, house and shade may move the middle of the light by. [min]</param>
    public static ClockCheck Check(ClockPlace place, ReadingBatch batch, ColumnKey key, double[] values, double systematicMin)
    {
        double step = batch.StepSeconds;
        LightDays light = SunClock.Days(batch.UtcMicros, values, step, ClockLimits.ToMiddleSeconds(batch.StampSide, step), place.Nursery.LatitudeDeg, place.Nursery.LongitudeDeg);
        string label = ClockWords.Label(key);
        if (light.Days.Length < ClockLimits.FewestDays)
        {
            return NotKnown(key, light, Phrase.Of($"Only {light.Days.Length} of the days of {label} could be followed from dark to dark; {ClockLimits.FewestDays} are needed."));
        }

        if (light.Days.Count(d => d.IsSwitched) > ClockLimits.SwitchedShare * light.Days.Length)
        {
            return NotKnown(key, light, Phrase.Of($"{ClockWords.Capital(label)} comes and goes in one step, as with lamps or a blackout, so it does not tell of the sun."));
        }

        LightDays sun = light with { Days = [.. light.Days.Where(d => !d.IsSwitched)] };
        (double lit, double day) = Lengths(sun);
        double longer = lit - day;
        double shortest = ClockLimits.ShortestBeyondHours(light.Level), longest = ClockLimits.LongestBeyondHours;
        bool outside = key.Channel == Outside;
        bool odd = longer > longest + (outside ? ClockLimits.OtherDateHours : 0) || longer < shortest - (outside ? ClockLimits.OtherDateHours : 0);
        ClockCheck check = odd && outside ? DayLengthWords.Of(place, key, sun, lit, day)
            : odd ? NotKnown(key, sun, Phrase.Of($"{ClockWords.Capital(label)} lasts {ClockWords.Hours(lit)} a day where sunrise to sunset is {ClockWords.Hours(day)}: lamps or screens shape it, so it does not tell of the sun."))
            : Judge(place, batch, key, values, sun, systematicMin);
        return check with { LitHours = Tenth(lit), DaylightHours = Tenth(day) };
    }

    private static ClockCheck Judge(ClockPlace place, ReadingBatch batch, ColumnKey key, double[] values, LightDays light, double systematicMin)
    {
        double stepError = ClockLimits.StepErrorMin(batch.StepSeconds), stampError = ClockLimits.StampErrorMin(batch.StampSide, batch.StepSeconds);
        ImmutableArray<ClockStretch> stretches = ClockStretches.Of(light.Days);
        double systematic = systematicMin * (batch.StepSeconds > 1800 ? ClockLimits.LongStepFactor : 1);
        double ErrorOf(ClockStretch s) => Math.Sqrt((s.ErrorMin * s.ErrorMin) + (systematic * systematic) + (stepError * stepError)) + stampError;
        ClockStretch nearest = stretches.MinBy(s => Math.Abs(s.OffsetMin));
        ClockSpell Spell(ClockStretch s) => new(
            place.DateOf(light.Days[s.First].NoonUnixSeconds),
            place.DateOf(light.Days[s.First + s.Count - 1].NoonUnixSeconds),
            s.Count,
            Tenth(s.OffsetMin),
            Tenth(ErrorOf(s)),
            IsFault(s, ErrorOf(s), nearest));
        ImmutableArray<ClockSpell> spells = [.. stretches.Select(Spell)];
        if (key.Channel != Outside && Unsupported(place, batch, values, light, stretches, spells))
        {
            return NotKnown(key, light, Phrase.Of($"The edges of the day and its bright hours do not agree at {ClockWords.Label(key)}: lamps, screens or shade move them, so it does not tell of the sun."));
        }

        ClockStretch last = stretches[^1];
        ClockDrift? drift = ClockDrift.Of(light.Days.AsSpan(last.First, last.Count));
        ClockCheck said = ClockWords.Light(place, key, light.Days.Length, spells, drift);
        return said with
        {
            Sentence = said.Sentence + ClockWords.HalfStep(said, batch, spells[^1].OffsetMin),
            SmallestMin = Tenth(SmallestMin(spells[^1].ErrorMin)),
            Spells = spells,
            DriftMinPerWeek = drift is ClockDrift slope ? Tenth(slope.MinPerWeek) : null,
            DriftErrorMinPerWeek = drift is ClockDrift error ? Tenth(error.ErrorMinPerWeek) : null,
        };
    }

    /// <summary>To a tenth: finer figures would differ from machine to machine and mean nothing.</summary>
    private static double Tenth(double value) => Math.Round(value, 1);

    /// <summary>Smallest offset that is told from a right clock. [min]</summary>
    private static double SmallestMin(double errorMin) => Math.Max(ClockLimits.LeastFaultMin, errorMin + ClockLimits.BeyondErrorMin);

    /// <summary>
    /// Too far from the sun; or a step away from the spell that is nearest to the sun, since what sky, house and stamps may do is the same in both.
    /// </summary>
    private static bool IsFault(ClockStretch stretch, double errorMin, ClockStretch nearest)
    {
        double step = Math.Abs(stretch.OffsetMin - nearest.OffsetMin);
        bool stepped = step >= ClockStretches.LeastStepMin && step > stretch.ErrorMin + nearest.ErrorMin + ClockLimits.BeyondErrorMin;
        return Math.Abs(stretch.OffsetMin) > SmallestMin(errorMin) || (stepped && Math.Abs(stretch.OffsetMin) > ClockLimits.LeastFaultMin);
    }

    /// <summary>Whether the bright hours of a faulty spell contradict what its edges say: a lamp or a screen moves the edges alone.</summary>
    private static bool Unsupported(ClockPlace place, ReadingBatch batch, double[] values, LightDays light, ImmutableArray<ClockStretch> stretches, ImmutableArray<ClockSpell> spells)
    {
        if (!spells.Any(s => s.IsFault))
        {
            return false;
        }

        ClockDay[] bright = SunClock.BrightHours(
            batch.UtcMicros, values, batch.StepSeconds, ClockLimits.ToMiddleSeconds(batch.StampSide, batch.StepSeconds), place.Nursery.LatitudeDeg, place.Nursery.LongitudeDeg);
        return stretches.Where((_, i) => spells[i].IsFault).Any(s =>
        {
            double from = light.Days[s.First].NoonUnixSeconds, to = light.Days[s.First + s.Count - 1].NoonUnixSeconds;
            double[] offsets = [.. bright.Where(d => d.NoonUnixSeconds >= from && d.NoonUnixSeconds <= to).Select(d => d.OffsetMin).Order()];
            return offsets.Length == 0 || offsets[offsets.Length / 2] * Math.Sign(s.OffsetMin) < (Math.Abs(s.OffsetMin) < SmallMin ? SmallShare : SupportedShare) * Math.Abs(s.OffsetMin);
        });
    }

    private static (double Lit, double Day) Lengths(LightDays light)
    {
        double[] lit = [.. light.Days.Select(d => d.LitHours).Order()], day = [.. light.Days.Select(d => d.DaylightHours).Order()];
        return (lit[lit.Length / 2], day[day.Length / 2]);
    }

    private static ClockCheck NotKnown(ColumnKey key, LightDays light, string why)
        => ClockWords.NotKnown(why) with { Channel = key.Channel, Sensor = key.Sensor, Days = light.Days.Length };
}
