using NodaTime;

namespace ClimateLens.Nursery.Time;

/// <summary>A regular grid of time steps. Step i covers [Start + i·Step, Start + (i+1)·Step).</summary>
/// <param name="Start">Start of the first step, UTC.</param>
/// <param name="Step">Length of a step; above zero, and an hour is a whole number of steps.</param>
/// <param name="Count">Number of steps, 0 or more.</param>
/// <param name="Zone">The nursery's time zone, for local hours and days.</param>
public sealed record TimeAxis(Instant Start, Duration Step, int Count, DateTimeZone Zone)
{
    /// <summary>End of the last step, exclusive.</summary>
    public Instant End => Start + (Step * Count);

    /// <summary>Start of step <paramref name="index"/>.</summary>
    public Instant StartOf(int index) => Start + (Step * index);

    /// <summary>The step that holds <paramref name="instant"/>; below 0 or at least <see cref="Count"/> when outside.</summary>
    public int IndexOf(Instant instant)
    {
        long ticks = (instant - Start).BclCompatibleTicks;
        long step = Step.BclCompatibleTicks;
        long index = ticks >= 0 ? ticks / step : ((ticks + 1) / step) - 1;
        return (int)Math.Clamp(index, -1, Count);
    }
}
