using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Wetness;

/// <summary>One of the runs that <see cref="FoliageFilm"/> works through side by side.</summary>
/// <param name="climate">Weather of the leaf.</param>
/// <param name="wateringMm">Water put onto a leaf area in each step [mm]; empty for none.</param>
/// <param name="capacityMm">Water that a leaf area holds on both sides together before it drips, above 0 to 2. [mm]</param>
/// <param name="leafC">Receives the leaf temperature; NaN where the weather is not known. [°C]</param>
/// <param name="filmMm">Receives the film at the end of each step; NaN where not known. [mm]</param>
public readonly ref struct FilmRun(LeafClimate climate, ReadOnlySpan<double> wateringMm, double capacityMm, Span<double> leafC, Span<double> filmMm)
{
    // Columns of their own: the loop over the steps reads each without copying the others.
    internal readonly ReadOnlySpan<double> AirC = climate.AirC, HumidityPct = climate.RelativeHumidityPct, AbsorbedWm2 = climate.AbsorbedWm2;
    internal readonly ReadOnlySpan<double> AboveC = climate.AboveC, AirSpeedMs = climate.AirSpeedMs, MeasuredLeafC = climate.MeasuredLeafC;
    internal readonly ReadOnlySpan<double> OpenShare = climate.OpenShare, WateringMm = wateringMm;
    internal readonly Span<double> LeafC = leafC, FilmMm = filmMm;
    internal readonly double CapacityMm = capacityMm;
    private readonly LeafClimate _climate = climate;

    internal void Check()
    {
        _climate.Check();
        Guard.SameLength(AirC.Length, LeafC.Length);
        Guard.SameLength(AirC.Length, FilmMm.Length);
        if (!WateringMm.IsEmpty)
        {
            Guard.SameLength(AirC.Length, WateringMm.Length);
        }
    }
}
