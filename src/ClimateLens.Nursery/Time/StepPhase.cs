namespace ClimateLens.Nursery.Time;

/// <summary>Where stamps lie within a repeating step.</summary>
public static class StepPhase
{
    /// <summary>The circular mean of stamps within a step. [µs from the start of the step]</summary>
    public static long MiddleOf(ReadOnlySpan<long> stamps, long step)
    {
        double sine = 0;
        double cosine = 0;
        foreach (long stamp in stamps)
        {
            (double sin, double cos) = Math.SinCos(Math.Tau * Place(stamp, step) / step);
            sine += sin;
            cosine += cos;
        }

        return (long)Math.Round(Math.Atan2(sine, cosine) / Math.Tau * step);
    }

    /// <summary>The way from a place in the step to a stamp's, the shorter way round. [µs]</summary>
    public static long Apart(long stamp, long place, long step)
    {
        long apart = Place(stamp - place, step);
        return apart * 2 > step ? apart - step : apart;
    }

    private static long Place(long stamp, long step) => ((stamp % step) + step) % step;
}
