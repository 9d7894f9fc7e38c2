namespace ClimateLens.Nursery.Channels;

/// <summary>Physical quantity of a channel, with the unit in which the store and the science hold it.</summary>
public enum Quantity
{
    /// <summary>Temperature on a scale. [°C]</summary>
    Temperature,

    /// <summary>Difference of temperatures. [K]</summary>
    TemperatureDifference,

    /// <summary>Relative humidity over liquid water. [%]</summary>
    RelativeHumidity,

    /// <summary>Pressure, vapour pressure or vapour-pressure deficit. [kPa]</summary>
    Pressure,

    /// <summary>Radiation flux density. [W/m²]</summary>
    Irradiance,

    /// <summary>Radiation received in a time, as energy. [J/cm²]</summary>
    RadiantExposure,

    /// <summary>Photosynthetic photon flux density. [µmol/(m² s)]</summary>
    PhotonFlux,

    /// <summary>Illuminance. [lx]</summary>
    Illuminance,

    /// <summary>Amount fraction of carbon dioxide. [ppm]</summary>
    CarbonDioxide,

    /// <summary>Speed of air. [m/s]</summary>
    Speed,

    /// <summary>Direction. [°]</summary>
    Angle,

    /// <summary>Position of a vent or screen, or another share. [%]</summary>
    Percent,

    /// <summary>On or off. [1]</summary>
    OnOff,

    /// <summary>Volume. [L]</summary>
    Volume,

    /// <summary>Depth of rain or of water a square metre. [mm]</summary>
    WaterDepth,

    /// <summary>Humidity deficit or absolute humidity. [g/m³]</summary>
    VapourDensity,

    /// <summary>Length. [mm]</summary>
    Length,

    /// <summary>Length of time. [min]</summary>
    Duration,

    /// <summary>Mass. [g]</summary>
    Mass,
}
