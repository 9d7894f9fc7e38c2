namespace ClimateLens.Science.Quantities;

/// <summary>Difference of two relative humidities, or the error of one, in percentage points. [%]</summary>
/// <param name="Value">Difference, in points of relative humidity. [%]</param>
/// <remarks>The humidity itself is <see cref="RelativeHumidity"/>. NaN means not known.</remarks>
public readonly record struct HumidityPoints(double Value);
