namespace ClimateLens.Analysis.Outlook;

/// <summary>What is known of a house by the hour.</summary>
internal enum HourlyColumn
{
    /// <summary>1 for a risk hour, else 0.</summary>
    Risk,

    /// <summary>Leaf temperature less the dew point among the leaves. [K]</summary>
    MarginK,

    /// <summary>Absolute humidity of the house. [g/m³]</summary>
    HumidityGm3,

    /// <summary>Absolute humidity outside. [g/m³]</summary>
    OutsideGm3,

    /// <summary>Temperature outside. [°C]</summary>
    OutsideC,

    /// <summary>Sun over the crop. [W/m²]</summary>
    SunWm2,

    /// <summary>Ground cover. [1]</summary>
    Cover,

    /// <summary>Share of the house in which leaves were watered, on the mean of its steps. [1]</summary>
    LeafWetted,
}
