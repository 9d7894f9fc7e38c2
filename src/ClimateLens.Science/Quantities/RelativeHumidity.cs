namespace ClimateLens.Science.Quantities;

/// <summary>Relative humidity over liquid water, also below 0 °C. [%]</summary>
/// <param name="Percent">Vapour pressure as a share of the saturation value over water. [%]</param>
/// <remarks>A difference of two relative humidities is <see cref="HumidityPoints"/>. NaN means not known.</remarks>
public readonly record struct RelativeHumidity(double Percent);
