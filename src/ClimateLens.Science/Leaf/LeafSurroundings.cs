using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>What surrounds one leaf at one moment.</summary>
/// <param name="Air">Air at the leaf, -30 to 60. [°C]</param>
/// <param name="Humidity">Relative humidity of the air at the leaf, 0 to 100. [%]</param>
/// <param name="AbsorbedWm2">Short-wave radiation absorbed by a leaf area, 0 to 1500. [W/m²]</param>
/// <param name="Above">Radiating temperature that the upper side sees: cover or screen. [°C]</param>
/// <param name="Below">Radiating temperature that the lower side sees: leaves, pots, bench. [°C]</param>
/// <param name="AirSpeedMs">Speed of the air at the leaf, 0.01 to 10. [m/s]</param>
public readonly record struct LeafSurroundings(
    Celsius Air, RelativeHumidity Humidity, double AbsorbedWm2, Celsius Above, Celsius Below, double AirSpeedMs)
{
    internal LeafSurroundings Checked()
    {
        Guard.Within(Air.Value, -30, 60, "°C", nameof(Air));
        Limits.Humidity(Humidity);
        Guard.Within(AbsorbedWm2, 0, 1500, "W/m²", nameof(AbsorbedWm2));
        Limits.Temperature(Above);
        Limits.Temperature(Below);
        Guard.Within(AirSpeedMs, 0.01, 10, "m/s", nameof(AirSpeedMs));
        return this;
    }

    internal bool Known => !double.IsNaN(Air.Value + Humidity.Percent + AbsorbedWm2 + Above.Value + Below.Value + AirSpeedMs);
}
