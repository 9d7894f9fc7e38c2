namespace ClimateLens.Science.Irrigation;

/// <summary>US liquid measures in litres, by the definition of the US gallon as 231 cubic inches of 2.54 cm. [NIST44]</summary>
public static class UsMeasures
{
    /// <summary>Litres in a US gallon; also L/h in a US gallon an hour. [L]</summary>
    public const double GallonL = 3.785411784;

    /// <summary>Millilitres in a US fluid ounce, the 128th part of a gallon. [mL]</summary>
    public const double FluidOunceMl = 29.5735295625;
}
