using ClimateLens.Science.Canopy;

namespace ClimateLens.Science.Leaf;

/// <summary>Air among the leaves where no sensor hangs there: an assumption.</summary>
/// <param name="ClosedTemperatureK">Difference to the main sensor in a closed canopy, -10 to 10. [K]</param>
/// <param name="ClosedTemperatureErrorK">Its standard error, 0 to 10. [K]</param>
/// <param name="ClosedHumidityPct">Difference of relative humidity in a closed canopy, -50 to 50. [points of %]</param>
/// <param name="ClosedHumidityErrorPct">Its standard error, 0 to 50. [points of %]</param>
/// <remarks>
/// <para><b>Formula:</b> each number times the closure (<see cref="CanopyShelter.Closure"/>): nothing up to a cover of 0.6, all of it at 1.</para>
/// <para><b>Source:</b> the direction and the largest values (5 K, 25 points) are those of greenhouse rose [WESTREENEN20] (abstract); the
/// defaults lie well below them and are a choice of this project, since no measurement in pot plants was found. <b>Error:</b> as large as the value.</para>
/// </remarks>
public readonly record struct InCanopyAir(
    double ClosedTemperatureK, double ClosedTemperatureErrorK, double ClosedHumidityPct, double ClosedHumidityErrorPct)
{
    /// <summary>A closed canopy is 0.5 ± 0.5 K colder and 5 ± 4 points damper than the main sensor.</summary>
    public static InCanopyAir Default { get; } = new(-0.5, 0.5, 5, 4);

    /// <summary>Switched off: the main sensor's air is the leaves' air, without error.</summary>
    public static InCanopyAir None { get; }

    /// <summary>The difference at a cover.</summary>
    /// <param name="cover">Ground cover, 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">The cover or a number of this assumption is impossible.</exception>
    public CanopyAirOffset At(double cover)
    {
        Guard.Within(Guard.Finite(ClosedTemperatureK), -10, 10, "K", nameof(ClosedTemperatureK));
        Guard.Within(Guard.Finite(ClosedTemperatureErrorK), 0, 10, "K", nameof(ClosedTemperatureErrorK));
        Guard.Within(Guard.Finite(ClosedHumidityPct), -50, 50, "%", nameof(ClosedHumidityPct));
        Guard.Within(Guard.Finite(ClosedHumidityErrorPct), 0, 50, "%", nameof(ClosedHumidityErrorPct));
        double closure = CanopyShelter.Closure(cover);
        return new(
            closure * ClosedTemperatureK, closure * ClosedTemperatureErrorK,
            closure * ClosedHumidityPct, closure * ClosedHumidityErrorPct);
    }
}
