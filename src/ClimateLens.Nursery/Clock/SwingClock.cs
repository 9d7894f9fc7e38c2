using ClimateLens.Nursery.Time;
using ClimateLens.Science.Clock;

namespace ClimateLens.Nursery.Clock;

/// <summary>Judges a clock by the daily swing of outside temperature: only faults of hours are seen.</summary>
internal static class SwingClock
{
    /// <summary>What the swing tells; null when there is none to speak of.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="batch">Its source, with its step.</param>
    /// <param name="key">Its column.</param>
    /// <param name="values">Its readings, NaN where missing or impossible.</param>
    /// <param name="whyNotLight">Why light does not tell, or empty.</param>
    public static ClockCheck? Check(ClockPlace place, ReadingBatch batch, ColumnKey key, double[] values, string whyNotLight)
    {
        double step = batch.StepSeconds;
        DailySwing? found = DailySwing.Of(batch.UtcMicros, values, step, ClockLimits.ToMiddleSeconds(batch.StampSide, step), place.Nursery.LatitudeDeg, place.Nursery.LongitudeDeg);
        if (found is not DailySwing swing || swing.AmplitudeK < ClockLimits.LeastSwingK)
        {
            return null;
        }

        double offset = swing.LagMin - DailySwing.UsualLagMin;
        offset = offset < -720 ? offset + 1440 : offset;
        bool fault = Math.Abs(offset) > ClockLimits.TemperatureFaultMin;
        ClockSpell spell = new(
            place.DateOf(batch.UtcMicros[0] / 1e6), place.DateOf(batch.UtcMicros[^1] / 1e6), swing.Days, Math.Round(offset, 1), DailySwing.ErrorMin, fault);
        return ClockWords.Swing(place, key, spell, whyNotLight) with { SmallestMin = ClockLimits.TemperatureFaultMin, Spells = [spell] };
    }
}
