namespace ClimateLens.Science.Psychrometrics;

/// <summary>Mass of water vapour in a volume of moist air.</summary>
public static class VapourDensity
{
    /// <summary>Inverse gas constant of water vapour, 1/(0.46151 kJ/(kg K)), in units for kPa and g/m³. [g K/(m³ kPa)]</summary>
    public const double GramKelvinPerCubicMetreKPa = 2166.8;
}
