using ClimateLens.Science.Canopy;

namespace ClimateLens.Science.Leaf;

/// <summary>What the difference between the air among the leaves and the main sensor is taken to hang on.</summary>
/// <param name="Cover">Ground cover, 0 to 1. [1]</param>
/// <param name="SunWm2">Short-wave radiation over the crop, 0 to 1500. [W/m²]</param>
/// <param name="HoursSinceWatering">Hours since water last was given, 0 or more; infinite for never. [h]</param>
public readonly record struct CanopyAirDrivers(double Cover, double SunWm2, double HoursSinceWatering)
{
    /// <summary>Terms of the fit: lasting difference, closure, closure times sun, water that still evaporates.</summary>
    internal const int Terms = 4;

    private const double StrongSunWm2 = 500;
    private const double DryingHours = 4;

    internal bool Known => Cover is >= 0 and <= 1 && SunWm2 is >= 0 and <= 1500 && HoursSinceWatering >= 0;

    internal void Fill(Span<double> terms)
    {
        double closure = CanopyShelter.Closure(Cover);
        terms[0] = 1;
        terms[1] = closure;
        terms[2] = closure * SunWm2 / StrongSunWm2;
        terms[3] = Math.Exp(-HoursSinceWatering / DryingHours);
    }
}
