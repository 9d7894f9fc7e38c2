namespace ClimateLens.Nursery.Channels;

/// <summary>The symbol that people read for the SI unit of a quantity, in sentences and on pages alike; files use <see cref="UnitCatalogue"/> codes.</summary>
public static class UnitSymbols
{
    /// <summary>Symbol without a space before it; empty for a quantity that is only a number.</summary>
    public static string Of(Quantity quantity) => quantity switch
    {
        Quantity.Temperature => "°C",
        Quantity.TemperatureDifference => "K",
        Quantity.RelativeHumidity or Quantity.Percent => "%",
        Quantity.Pressure => "kPa",
        Quantity.Irradiance => "W/m²",
        Quantity.RadiantExposure => "J/cm²",
        Quantity.PhotonFlux => "µmol/(m² s)",
        Quantity.Illuminance => "lx",
        Quantity.CarbonDioxide => "ppm",
        Quantity.Speed => "m/s",
        Quantity.Angle => "°",
        Quantity.Volume => "L",
        Quantity.WaterDepth or Quantity.Length => "mm",
        Quantity.VapourDensity => "g/m³",
        Quantity.Duration => "min",
        Quantity.Mass => "g",
        _ => "",
    };
}
