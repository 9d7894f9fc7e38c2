using ClimateLens.HouseSimulator.Control;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Weather;

namespace ClimateLens.HouseSimulator.Physics;

/// <summary>How air moves; every coefficient is a plausible guess for a glasshouse four metres high.</summary>
/// <param name="VentilationMs">Exchange with the outside, a square metre of floor. [m³/(m² s)]</param>
/// <param name="InsideMs">Air speed over the crop. [m/s]</param>
/// <param name="CanopyExchangeMs">Exchange between the air within the canopy and the house. [m/s]</param>
/// <param name="LeafResistance">Boundary resistance to heat of one leaf side. [s/m]</param>
public readonly record struct AirFlow(double VentilationMs, double InsideMs, double CanopyExchangeMs, double LeafResistance)
{
    private const double LeafWidthM = 0.06;

    public static AirFlow Of(ClimateComputer computer, in WeatherPoint outside, double airC, double leafC, double cover, HouseNature nature)
    {
        double lift = 0.0021 * Math.Sqrt(Math.Max(0, airC - outside.TemperatureC));
        double lee = computer.LeePct / 100, wind = computer.WindPct / 100;
        double leak = 1.9e-4 * (1 + (0.35 * outside.WindMs));
        double open = (lee * ((0.0012 * outside.WindMs) + lift)) + (wind * ((0.0022 * outside.WindMs) + lift));
        double ventilation = leak + (open * (1 - (0.55 * computer.ScreenPct / 100)));
        double inside = 0.06 + (7 * ventilation) + (0.0006 * Math.Max(0, computer.PipeC - airC));
        double exchange = nature.CanopyExchangeFactor * (0.0018 + (0.016 * inside) + (0.008 * (1 - (cover * cover))) + (0.005 * Math.Sqrt(Math.Max(0, leafC - airC))));
        return new AirFlow(ventilation, inside, exchange, LeafSide(nature.LeafAirFactor * inside, Math.Abs(leafC - airC)));
    }

    // Mixed free and forced convection over a leaf: Stanghellini 1987 (coefficients from memory).
    private static double LeafSide(double speed, double differenceK)
        => 1174 * Math.Sqrt(LeafWidthM) / Portable.FourthRoot((LeafWidthM * differenceK) + (207 * speed * speed));
}
