namespace ClimateLens.Science.Pots;

/// <summary>A bench between two checks without a watering between them.</summary>
/// <param name="Bench">Number of the bench, from 0.</param>
/// <param name="PowerKPaH">Drying power of the air in between: vapour-pressure deficit summed over time, 0 or above. [kPa h]</param>
/// <param name="Fall">Level at its start less level at its end; below 0 where graders saw it wetter. [levels]</param>
public readonly record struct DryingStretch(int Bench, double PowerKPaH, double Fall);
