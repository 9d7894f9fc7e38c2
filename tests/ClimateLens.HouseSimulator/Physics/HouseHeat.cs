using ClimateLens.HouseSimulator.Control;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Weather;

namespace ClimateLens.HouseSimulator.Physics;

/// <summary>What drives the heat of a house for one step.</summary>
public readonly record struct HeatDrive(
    double LightWm2, ClimateComputer Computer, WeatherPoint Outside, AirFlow Flow, CanopyState Crop, HouseWater Water);

/// <summary>Heat of air, canopy air, leaves, floor and glass. Coefficients are plausible guesses, not those of a real house.</summary>
public sealed class HouseHeat
{
    private const int Air = 0, Canopy = 1, Leaf = 2, Floor = 3, Glass = 4;
    private const double AirJm3K = 1205, LatentJkg = 2.454e6, RadiationWm2K = 5.3;
    private readonly HeatNetwork _network = new(12_000, 1_500, 7_000, 75_000, 9_000);

    public HouseHeat()
    {
        double[] start = [17, 17, 17, 17, 15];
        start.CopyTo(_network.TemperatureC, 0);
    }

    public double AirC => _network.TemperatureC[Air];

    public double CanopyC => _network.TemperatureC[Canopy];

    public double LeafC => _network.TemperatureC[Leaf];

    public double FloorC => _network.TemperatureC[Floor];

    public double GlassC => _network.TemperatureC[Glass];

    /// <summary>Heat above 0 °C in all bodies. [J/m²]</summary>
    public double StoredJm2 => _network.HeatJm2;

    /// <summary>One step; returns the heat that came in. [J/m²]</summary>
    public double Step(in HeatDrive drive, double seconds)
    {
        _network.Begin();
        Convection(drive);
        Radiation(drive);
        Sun(drive.LightWm2, drive.Crop.Cover);
        Evaporation(drive.Water);
        return _network.Step(seconds);
    }

    private void Convection(in HeatDrive drive)
    {
        double screen = drive.Computer.ScreenPct / 100;
        double pipes = 2.6;
        _network.Link(Leaf, Canopy, 2 * drive.Crop.LeafAreaIndex * AirJm3K / drive.Flow.LeafResistance);
        _network.Link(Canopy, Air, AirJm3K * drive.Flow.CanopyExchangeMs);
        _network.Link(Floor, Air, 3.2);
        _network.Link(Floor, Canopy, 1.5);
        _network.Link(Air, Glass, 6.6 * (1 - (0.65 * screen)));
        _network.Edge(Air, AirJm3K * drive.Flow.VentilationMs, drive.Outside.TemperatureC);
        _network.Edge(Air, 0.75 * pipes, drive.Computer.PipeC);
        _network.Edge(Canopy, 0.25 * pipes, drive.Computer.PipeC);
        _network.Edge(Glass, 1.1 * (6 + (3.2 * drive.Outside.WindMs)), drive.Outside.TemperatureC);
        _network.Edge(Floor, 2.5, 15);
    }

    // A closed screen radiates back at a temperature between air and glass: part of the exchange turns to the air.
    private void Radiation(in HeatDrive drive)
    {
        double screen = drive.Computer.ScreenPct / 100, cover = drive.Crop.Cover;
        double toGlass = 1 - (0.68 * screen), toAir = 0.6 * screen;
        _network.Link(Leaf, Glass, RadiationWm2K * cover * toGlass);
        _network.Link(Leaf, Air, RadiationWm2K * cover * toAir);
        _network.Link(Leaf, Floor, RadiationWm2K * cover * 0.6);
        _network.Link(Floor, Glass, RadiationWm2K * (1 - cover) * toGlass);
        _network.Link(Floor, Air, RadiationWm2K * (1 - cover) * toAir);
        _network.Edge(Glass, 4.6, drive.Outside.SkyC);
    }

    private void Sun(double light, double cover)
    {
        _network.Source(Leaf, 0.72 * cover * light);
        _network.Source(Floor, ((0.62 * (1 - cover)) + (0.08 * cover)) * light);
        _network.Source(Air, 0.07 * light);
        _network.Source(Glass, 0.08 * light);
    }

    private void Evaporation(HouseWater water)
    {
        _network.Source(Leaf, -LatentJkg * (water.Transpiration.FluxKgM2S + water.Film.FluxKgM2S));
        _network.Source(Floor, -LatentJkg * (water.Floor.FluxKgM2S + water.PotTop.FluxKgM2S));
        _network.Source(Glass, -LatentJkg * water.Glass.FluxKgM2S);
    }
}
