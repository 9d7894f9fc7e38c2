using System.Collections.Immutable;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Nursery.Clock;

/// <summary>What a sensor can tell of its clock. Where the figures come from: docs/science/clock.md.</summary>
public static class ClockLimits
{
    /// <summary>
    /// Offsets up to this are never called a fault: a house that gets its light from one side, or trees, move the middle of the light by as much.
    /// A zone is wrong by 15 minutes at least, a change of clocks by 30. Choice of this project. [min]
    /// </summary>
    public const double LeastFaultMin = 20;

    /// <summary>How far beyond its error an offset must lie. Choice of this project. [min]</summary>
    public const double BeyondErrorMin = 10;

    /// <summary>Fewest days that are judged. [d]</summary>
    public const int FewestDays = 3;

    /// <summary>Slower gains are left to the seasons, which move the shade of what stands around. [min/week]</summary>
    public const double LeastDriftMinPerWeek = 3;

    /// <summary>Share of days with switched light from which on the sensor does not tell of the sun. [1]</summary>
    public const double SwitchedShare = 0.25;

    /// <summary>Light may last this much longer than from sunrise to sunset: twilight, and the step. [h]</summary>
    public const double LongestBeyondHours = 0.75;

    /// <summary>Light that is this much longer or shorter than it may be belongs to another date or place. [h]</summary>
    public const double OtherDateHours = 1;

    /// <summary>Channels that are judged, the best first, each with what a right clock may still be off by at it: the sky alone outside, house and shade as well inside. [min]</summary>
    public static ImmutableArray<(string Channel, double SystematicMin)> LightChannels { get; } =
        [("globalRadiation", 6), ("insideRadiation", 20), ("ppfd", 20), ("illuminance", 20)];

    /// <summary>With steps over half an hour day is told from night at a brighter level, at which house and shade move its middle more. [1]</summary>
    public const double LongStepFactor = 1.4;

    /// <summary>The channel for houses without light.</summary>
    public const string Temperature = "outsideTemperature";

    /// <summary>Least daily wave of outside temperature that tells the time of day. [K]</summary>
    public const double LeastSwingK = 1;

    /// <summary>Offset by temperature from which on it is called a fault. [min]</summary>
    public const double TemperatureFaultMin = 180;

    /// <summary>Light that lasts less than this, by how much, is cut off by screens, walls or a fault. At higher levels light is seen for a shorter time. [h]</summary>
    public static double ShortestBeyondHours(double level) => -1.6 - (8 * level);

    /// <summary>What long steps add to the error: where in the step light came is not seen. [min]</summary>
    public static double StepErrorMin(double stepSeconds) => stepSeconds > 900 ? 0.15 * stepSeconds / 60 : 0;

    /// <summary>Half a step for stamps said to be of a moment, since many computers write means so. [min]</summary>
    public static double StampErrorMin(StampSide side, double stepSeconds) => side == StampSide.Instant ? stepSeconds / 120 : 0;

    /// <summary>From a stamp to the middle of what it labels. [s]</summary>
    public static double ToMiddleSeconds(StampSide side, double stepSeconds) => side switch
    {
        StampSide.IntervalStart => stepSeconds / 2,
        StampSide.IntervalEnd => -stepSeconds / 2,
        _ => 0,
    };
}
