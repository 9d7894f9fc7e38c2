namespace ClimateLens.Science.Leaf;

/// <summary>What decides the temperature of a house's cover at one moment.</summary>
/// <param name="InsideC">Air in the house, -30 to 60. [°C]</param>
/// <param name="OutsideC">Air outside, -60 to 60. [°C]</param>
/// <param name="SkyC">Radiating temperature of the sky, -100 to 60. [°C]</param>
/// <param name="WindMs">Wind, 0 to 60. [m/s]</param>
/// <param name="AbsorbedWm2">Short-wave radiation that the cover absorbs, 0 to 500. [W/m²]</param>
/// <param name="ScreenClosed">Share of the house that the screen closes, 0 to 1. [1]</param>
public readonly record struct CoverWeather(
    double InsideC, double OutsideC, double SkyC, double WindMs, double AbsorbedWm2, double ScreenClosed)
{
    /// <summary>Vapour pressure of the air in the house, 0 to 10; 0, as when left out, for no dew on the cover. [kPa]</summary>
    public double InsideVapourKPa { get; init; }

    internal CoverWeather Checked()
    {
        Guard.Within(InsideC, -30, 60, "°C", nameof(InsideC));
        Guard.Within(OutsideC, -60, 60, "°C", nameof(OutsideC));
        Guard.Within(SkyC, -100, 60, "°C", nameof(SkyC));
        Guard.Within(WindMs, 0, 60, "m/s", nameof(WindMs));
        Guard.Within(AbsorbedWm2, 0, 500, "W/m²", nameof(AbsorbedWm2));
        Guard.Within(ScreenClosed, 0, 1, "(share)", nameof(ScreenClosed));
        Guard.Within(InsideVapourKPa, 0, 10, "kPa", nameof(InsideVapourKPa));
        return this;
    }

    internal bool Possible =>
        InsideC is >= -30 and <= 60 && OutsideC is >= -60 and <= 60 && SkyC is >= -100 and <= 60
        && WindMs is >= 0 and <= 60 && AbsorbedWm2 is >= 0 and <= 500 && ScreenClosed is >= 0 and <= 1
        && InsideVapourKPa is >= 0 and <= 10;
}
