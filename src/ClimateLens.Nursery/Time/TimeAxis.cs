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
    public Instant End => StartOf(Count);

    /// <summary>Start of step <paramref name="index"/>.</summary>
    /// <remarks>In nanoseconds: NodaTime multiplies a duration by way of decimals, which shows in a profile.</remarks>
    public Instant StartOf(int index) => Start.PlusNanoseconds(Step.ToInt64Nanoseconds() * index);

    /// <summary>The step that holds <paramref name="instant"/>; -1 before the first and <see cref="Count"/> after the last.</summary>
    public int IndexOf(Instant instant)
    {
        Int128 past = (instant - Start).ToInt128Nanoseconds();
        return past < 0 ? -1 : (int)Int128.Min(past / Step.ToInt128Nanoseconds(), Count);
    }
}
