using ClimateLens.HouseSimulator.Control;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Physics;
using ClimateLens.HouseSimulator.Watering;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.HouseSimulator;

/// <summary>
/// One house as a few well-mixed bodies, a square metre of floor at a time: air of the house, air within the
/// canopy, leaves, floor, glass; water as vapour, on leaves, on the floor, on the glass and in pots.
/// </summary>
public sealed class HouseModel
{
    private const double StepS = 60;
    private readonly HouseOptions _options;
    private readonly ClimateComputer _computer;
    private readonly HouseWater _water;
    private readonly HouseHeat _heat = new();
    private double _carbonDioxidePpm = 450;
    private AirFlow _flow;

    public HouseModel(HouseOptions options, ulong seed, LocalDateTime start)
    {
        _options = options;
        _computer = new ClimateComputer(options.Control);
        Pots = new PotBench(seed, options.Id);
        Crop = options.Crop.At(start, options.Nature.LeafAreaFactor);
        _water = new HouseWater(Pots, options.Nature);
        Book = new HouseBook { StoredAtStart = WaterStored, HeatAtStart = HeatStored };
    }

    public PotBench Pots { get; }

    public CanopyState Crop { get; private set; }

    public HouseBook Book { get; }

    /// <summary>All water in the house. [kg/m²]</summary>
    public double WaterStored => _water.StoredKgM2(Crop.DensityPerM2);

    /// <summary>Heat above 0 °C in all bodies. [J/m²]</summary>
    public double HeatStored => _heat.StoredJm2;

    /// <summary>Lets crop and set points be what they are at that time; plants that are spaced out take their water with them.</summary>
    public void SetCrop(LocalDateTime at)
    {
        CanopyState next = _options.Crop.At(at, _options.Nature.LeafAreaFactor);
        if (next.DensityPerM2 < Crop.DensityPerM2)
        {
            double share = next.DensityPerM2 / Crop.DensityPerM2;
            Book.MovedOut += _water.MoveOut(Crop.DensityPerM2, share);
        }

        Crop = next;
        DawnControl? dawn = _options.Dawn?.Holds(at) == true ? _options.Dawn : null;
        _computer.Hold(dawn?.MinimumPipeC ?? 0, dawn?.MinimumLeePct ?? 0);
    }

    /// <summary>One minute.</summary>
    public void Step(int localMinuteOfDay, in WeatherPoint outside, IEnumerable<WateringEvent> running)
    {
        _computer.Step(
            localMinuteOfDay,
            _heat.AirC + _options.TemperatureBiasK,
            Math.Min(100, SaturatedAir.HumidityPct(_water.HouseKgM3, _heat.AirC) + _options.HumidityBiasPct),
            outside);
        double shade = outside.RadiationWm2 > 20 ? 0.5 * _computer.ScreenPct / 100 : 0;
        double light = _options.Nature.RoofTransmission * (1 - shade) * outside.RadiationWm2;
        foreach (WateringEvent watering in running)
        {
            _water.Receive(watering, Crop, Book);
        }

        _flow = AirFlow.Of(_computer, outside, _heat.AirC, _heat.LeafC, Crop.Cover, _options.Nature);
        var surfaces = new SurfaceAir(_heat.LeafC, _heat.FloorC, _heat.GlassC, light, _computer.ScreenPct / 100);
        _water.Step(surfaces, Crop, _flow, outside.VapourKgM3, Book, StepS);
        Book.HeatIn += _heat.Step(new HeatDrive(light, _computer, outside, _flow, Crop, _water), StepS);
        StepCarbonDioxide(light);
    }

    /// <summary>The state now.</summary>
    public HouseMinute State()
    {
        double house = _water.HouseKgM3, canopy = _water.CanopyKgM3;
        double canopyDewC = SaturatedAir.DewPointC(SaturatedAir.PressureOfKPa(canopy, _heat.CanopyC));
        return new HouseMinute
        {
            AirC = _heat.AirC,
            HumidityPct = SaturatedAir.HumidityPct(house, _heat.AirC),
            DewPointC = SaturatedAir.DewPointC(SaturatedAir.PressureOfKPa(house, _heat.AirC)),
            CanopyC = _heat.CanopyC,
            CanopyHumidityPct = SaturatedAir.HumidityPct(canopy, _heat.CanopyC),
            LeafC = _heat.LeafC,
            LeafMarginK = _heat.LeafC - canopyDewC,
            FilmMm = _water.FilmKgM2,
            FloorMm = _water.FloorKgM2,
            TranspirationGm2H = 3.6e6 * _water.Transpiration.FluxKgM2S,
            FilmEvaporationGm2H = 3.6e6 * _water.Film.FluxKgM2S,
            FloorEvaporationGm2H = 3.6e6 * (_water.Floor.FluxKgM2S + _water.PotTop.FluxKgM2S),
            VentilatedGm2H = 3.6e6 * _water.VentilatedKgM2S,
            GlassDewGm2H = -3.6e6 * _water.Glass.FluxKgM2S,
            CarbonDioxidePpm = _carbonDioxidePpm,
            PipeC = _computer.PipeC,
            HeatingSetPointC = _computer.HeatingSetPointC,
            LeePct = _computer.LeePct,
            WindPct = _computer.WindPct,
            ScreenPct = _computer.ScreenPct,
            Cover = Crop.Cover,
            PotLevel = PotBench.Level(Pots.MeanMl),
        };
    }

    // Leaves and medium breathe, light fixes; 1 g/m³ is about 546 ppm at 20 °C.
    private void StepCarbonDioxide(double light)
    {
        double uptake = 1.1e-3 * Crop.Cover * light / (light + 180) * _carbonDioxidePpm / (_carbonDioxidePpm + 150);
        double source = 546 * (1.1e-4 - uptake);
        double gain = StepS / HouseWater.HouseHeightM;
        _carbonDioxidePpm = (_carbonDioxidePpm + (gain * (source + (_flow.VentilationMs * 424)))) / (1 + (gain * _flow.VentilationMs));
    }
}
