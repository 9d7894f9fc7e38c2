namespace ClimateLens.HouseSimulator.Physics;

/// <summary>
/// Vapour in the air within the canopy and in the air of the house, one implicit step at a time. No surface gives
/// more than it holds, and every kilogram is booked on both sides.
/// </summary>
public sealed class VapourBalance(double canopyHeightM, double houseHeightM)
{
    /// <summary>Vapour density within the canopy. [kg/m³]</summary>
    public double CanopyKgM3 { get; private set; } = 0.011;

    /// <summary>Vapour density of the house air. [kg/m³]</summary>
    public double HouseKgM3 { get; private set; } = 0.011;

    /// <summary>Vapour in both. [kg/m²]</summary>
    public double StoredKgM2 => (CanopyKgM3 * canopyHeightM) + (HouseKgM3 * houseHeightM);

    /// <summary>One step. Returns the vapour lost to the outside. [kg/m²]</summary>
    /// <param name="surfaces">All surfaces; their fluxes are set.</param>
    /// <param name="exchange">Between canopy and house. [m/s]</param>
    /// <param name="ventilation">Between house and outside. [m/s]</param>
    /// <param name="outsideKgM3">Vapour density outside. [kg/m³]</param>
    /// <param name="seconds">Length. [s]</param>
    public double Step(ReadOnlySpan<WetSurface> surfaces, double exchange, double ventilation, double outsideKgM3, double seconds)
    {
        foreach (WetSurface surface in surfaces)
        {
            double around = surface.InCanopy ? CanopyKgM3 : HouseKgM3;
            surface.Emptied = false;
            surface.Conductance = surface.DensityKgM3 > around ? surface.Evaporating : surface.Condensing;
        }

        double canopy, house;
        do
        {
            (canopy, house) = Solve(surfaces, exchange, ventilation, outsideKgM3, seconds);
        }
        while (AnyOverdrawn(surfaces, canopy, house, seconds));
        (CanopyKgM3, HouseKgM3) = (canopy, house);
        return ventilation * (house - outsideKgM3) * seconds;
    }

    private (double Canopy, double House) Solve(
        ReadOnlySpan<WetSurface> surfaces, double exchange, double ventilation, double outsideKgM3, double seconds)
    {
        double canopyStore = canopyHeightM / seconds, houseStore = houseHeightM / seconds;
        double a = canopyStore + exchange, right = canopyStore * CanopyKgM3;
        double b = houseStore + exchange + ventilation, below = (houseStore * HouseKgM3) + (ventilation * outsideKgM3);
        foreach (WetSurface surface in surfaces)
        {
            double fixedFlux = surface.Emptied ? surface.StoreKgM2 / seconds : 0;
            double conductance = surface.Emptied ? 0 : surface.Conductance;
            double gives = fixedFlux + (conductance * surface.DensityKgM3);
            if (surface.InCanopy)
            {
                (a, right) = (a + conductance, right + gives);
            }
            else
            {
                (b, below) = (b + conductance, below + gives);
            }
        }

        double house = ((a * below) + (exchange * right)) / ((a * b) - (exchange * exchange));
        return ((right + (exchange * house)) / a, house);
    }

    private static bool AnyOverdrawn(ReadOnlySpan<WetSurface> surfaces, double canopy, double house, double seconds)
    {
        bool any = false;
        foreach (WetSurface surface in surfaces)
        {
            if (surface.Emptied)
            {
                surface.FluxKgM2S = surface.StoreKgM2 / seconds;
                continue;
            }

            surface.FluxKgM2S = surface.Conductance * (surface.DensityKgM3 - (surface.InCanopy ? canopy : house));
            if (surface.FluxKgM2S * seconds > surface.StoreKgM2)
            {
                any = surface.Emptied = true;
            }
        }

        return any;
    }
}
