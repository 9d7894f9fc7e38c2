using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Watering;

namespace ClimateLens.HouseSimulator.Physics;

/// <summary>What the water of a house needs to know of its heat and light.</summary>
/// <param name="LeafC">[°C]</param>
/// <param name="FloorC">[°C]</param>
/// <param name="GlassC">[°C]</param>
/// <param name="LightWm2">Sun inside. [W/m²]</param>
/// <param name="Screen">Share of the roof that the screen closes. [1]</param>
public readonly record struct SurfaceAir(double LeafC, double FloorC, double GlassC, double LightWm2, double Screen);

/// <summary>All water of a house: vapour, leaf film, wet floor, dew on the glass, pots.</summary>
public sealed class HouseWater(PotBench pots, HouseNature nature)
{
    /// <summary>[m]</summary>
    public const double HouseHeightM = 4, CanopyHeightM = 0.25;

    private const double FunnelledIntoPots = 1.15, FloorHoldsKgM2 = 0.3, GlassHoldsKgM2 = 0.03;
    private readonly VapourBalance _vapour = new(CanopyHeightM, HouseHeightM);

    /// <summary>Water on the leaves. [kg/m²]</summary>
    public double FilmKgM2 { get; private set; }

    /// <summary>Water on floor and bench. [kg/m²]</summary>
    public double FloorKgM2 { get; private set; }

    public double GlassKgM2 { get; private set; }

    public double HouseKgM3 => _vapour.HouseKgM3;

    public double CanopyKgM3 => _vapour.CanopyKgM3;

    public double VentilatedKgM2S { get; private set; }

    public WetSurface Transpiration { get; } = new(true);

    public WetSurface Film { get; } = new(true);

    public WetSurface PotTop { get; } = new(true);

    public WetSurface Floor { get; } = new(false);

    public WetSurface Glass { get; } = new(false);

    /// <summary>Share of overhead water, less what leaves hold, that ends in pots. [1]</summary>
    public static double ShareCaught(double potsPerM2) => Math.Min(0.9, FunnelledIntoPots * CropPlan.PotAreaM2 * potsPerM2);

    /// <summary>All of it. [kg/m²]</summary>
    public double StoredKgM2(double potsPerM2)
        => _vapour.StoredKgM2 + FilmKgM2 + FloorKgM2 + GlassKgM2 + (pots.MeanMl / 1000 * potsPerM2);

    /// <summary>A share of the plants stays; the others leave with their water. Returns what left. [kg/m²]</summary>
    public double MoveOut(double potsPerM2, double staying)
    {
        double film = FilmKgM2 * (1 - staying);
        FilmKgM2 *= staying;
        return film + (pots.MeanMl / 1000 * potsPerM2 * (1 - staying));
    }

    /// <summary>One minute of a watering.</summary>
    public void Receive(WateringEvent watering, CanopyState crop, HouseBook book)
    {
        double onBench = watering.LitresPerM2 / watering.Minutes;
        double given = onBench * watering.Share, left = given;
        double toPot = onBench / crop.DensityPerM2;
        if (watering.IsOverhead)
        {
            double room = Math.Max(0, (nature.FilmKgM2 * crop.LeafAreaIndex) - FilmKgM2);
            double caught = Math.Min(room, 0.35 * crop.Cover * given);
            FilmKgM2 += caught;
            left -= caught;
            double share = ShareCaught(crop.DensityPerM2);
            toPot = left / watering.Share * share / crop.DensityPerM2;
        }

        double through = pots.Water(watering.Bench, 1000 * toPot) / 1000 * crop.DensityPerM2;
        FloorKgM2 += left - (toPot * crop.DensityPerM2 * watering.Share) + through;
        book.Given += given;
    }

    /// <summary>Evaporation, dew, vents and drains.</summary>
    public void Step(SurfaceAir at, CanopyState crop, AirFlow flow, double outsideKgM3, HouseBook book, double seconds)
    {
        SetLeaves(at, crop, flow);
        SetOthers(at, crop, flow);
        double lost = _vapour.Step([Transpiration, Film, PotTop, Floor, Glass], flow.CanopyExchangeMs, flow.VentilationMs, outsideKgM3, seconds);
        VentilatedKgM2S = lost / seconds;
        book.Ventilated += lost;
        FilmKgM2 = Math.Max(0, FilmKgM2 - (Film.FluxKgM2S * seconds));
        FloorKgM2 = Math.Max(0, FloorKgM2 - (Floor.FluxKgM2S * seconds));
        GlassKgM2 = Math.Max(0, GlassKgM2 - (Glass.FluxKgM2S * seconds));
        pots.Use(1000 * (Transpiration.FluxKgM2S + PotTop.FluxKgM2S) * seconds / crop.DensityPerM2);
        Drain(crop, book);
    }

    private void SetLeaves(SurfaceAir at, CanopyState crop, AirFlow flow)
    {
        double vapourSide = 0.92 * flow.LeafResistance; // heat to vapour through a laminar layer
        double wet = Math.Min(1, Math.Sqrt(FilmKgM2 / (nature.FilmKgM2 * crop.LeafAreaIndex)));
        double light = 0.72 * crop.Cover * at.LightWm2 / crop.LeafAreaIndex;
        double pores = nature.PoreFactor * 92 * (light + 65) / (light + 1.6) * DryPotFactor();
        Film.DensityKgM3 = Transpiration.DensityKgM3 = SaturatedAir.DensityKgM3(at.LeafC);
        Film.Evaporating = crop.LeafAreaIndex * wet / vapourSide;
        Film.Condensing = crop.LeafAreaIndex / vapourSide;
        Film.StoreKgM2 = FilmKgM2;
        Transpiration.Evaporating = crop.LeafAreaIndex * (1 - (0.5 * wet)) / (vapourSide + pores);
        Transpiration.Condensing = 0;
        Transpiration.StoreKgM2 = pots.MeanMl / 1000 * crop.DensityPerM2;
    }

    private void SetOthers(SurfaceAir at, CanopyState crop, AirFlow flow)
    {
        double floorWet = 0.75 * Math.Min(1, Math.Sqrt(FloorKgM2 / FloorHoldsKgM2));
        double floorAir = 1 / (330 / (1 + (3 * flow.InsideMs)));
        Floor.DensityKgM3 = PotTop.DensityKgM3 = SaturatedAir.DensityKgM3(at.FloorC);
        Floor.Evaporating = floorWet * floorAir;
        Floor.Condensing = floorAir;
        Floor.StoreKgM2 = FloorKgM2;
        double medium = Math.Clamp((PotBench.Level(pots.MeanMl) - 1) / 3, 0, 1);
        PotTop.Evaporating = CropPlan.PotAreaM2 * crop.DensityPerM2 * medium / 450;
        PotTop.Condensing = CropPlan.PotAreaM2 * crop.DensityPerM2 / 450;
        PotTop.StoreKgM2 = pots.MeanMl / 1000 * crop.DensityPerM2;
        Glass.DensityKgM3 = SaturatedAir.DensityKgM3(at.GlassC);
        Glass.Condensing = Glass.Evaporating = 0.0055 * (1 - (0.75 * at.Screen));
        Glass.StoreKgM2 = GlassKgM2;
    }

    private double DryPotFactor() => 1 + (8 * Math.Max(0, 1.6 - PotBench.Level(pots.MeanMl)));

    private void Drain(CanopyState crop, HouseBook book)
    {
        double fromPots = pots.DrainMinute() / 1000 * crop.DensityPerM2;
        double fromFloor = Math.Max(0, FloorKgM2 - FloorHoldsKgM2) / 20;
        FloorKgM2 += fromPots - fromFloor;
        book.FloorDrained += fromFloor;
        double leaf = Math.Max(0, FilmKgM2 - (nature.FilmKgM2 * crop.LeafAreaIndex));
        FilmKgM2 -= leaf;
        FloorKgM2 += leaf;
        double glass = Math.Max(0, GlassKgM2 - GlassHoldsKgM2);
        GlassKgM2 -= glass;
        book.GlassDrained += glass;
    }
}
