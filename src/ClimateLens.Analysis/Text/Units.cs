using ClimateLens.Nursery.Channels;

namespace ClimateLens.Analysis.Text;

/// <summary>Unit symbols in sentences, with the space before them.</summary>
internal static class Units
{
    /// <summary>Symbol of a quantity's SI unit.</summary>
    public static string Symbol(Quantity quantity) => quantity switch
    {
        Quantity.Temperature => " °C",
        Quantity.TemperatureDifference => " K",
        Quantity.RelativeHumidity or Quantity.Percent => " %",
        Quantity.Pressure => " kPa",
        Quantity.Irradiance => " W/m²",
        Quantity.PhotonFlux => " µmol/(m² s)",
        Quantity.Illuminance => " lx",
        Quantity.CarbonDioxide => " ppm",
        Quantity.Speed => " m/s",
        Quantity.Angle => "°",
        Quantity.Volume => " L",
        Quantity.WaterDepth or Quantity.Length => " mm",
        Quantity.VapourDensity => " g/m³",
        _ => "",
    };

    /// <summary>Symbol of a difference of two values of a quantity.</summary>
    public static string Difference(Quantity quantity) => quantity switch
    {
        Quantity.Temperature => " K",
        Quantity.RelativeHumidity => " points",
        _ => Symbol(quantity),
    };
}
