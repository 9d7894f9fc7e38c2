namespace ClimateLens.HouseSimulator;

/// <summary>The true state of a house at the end of one minute.</summary>
public readonly record struct HouseMinute
{
    /// <summary>[°C]</summary>
    public double AirC { get; init; }

    /// <summary>[%]</summary>
    public double HumidityPct { get; init; }

    /// <summary>Dew point of the house air. [°C]</summary>
    public double DewPointC { get; init; }

    /// <summary>Air within the canopy. [°C]</summary>
    public double CanopyC { get; init; }

    /// <summary>Air within the canopy. [%]</summary>
    public double CanopyHumidityPct { get; init; }

    /// <summary>[°C]</summary>
    public double LeafC { get; init; }

    /// <summary>Leaf temperature minus the dew point of the air around it. [K]</summary>
    public double LeafMarginK { get; init; }

    /// <summary>Water on leaves, a square metre of floor. [kg/m² = mm]</summary>
    public double FilmMm { get; init; }

    /// <summary>Water on the floor. [mm]</summary>
    public double FloorMm { get; init; }

    /// <summary>From leaf pores. [g/(m² h)]</summary>
    public double TranspirationGm2H { get; init; }

    /// <summary>From the leaf film; negative: dew. [g/(m² h)]</summary>
    public double FilmEvaporationGm2H { get; init; }

    /// <summary>From floor and pot tops. [g/(m² h)]</summary>
    public double FloorEvaporationGm2H { get; init; }

    /// <summary>Carried out by vents and leaks. [g/(m² h)]</summary>
    public double VentilatedGm2H { get; init; }

    /// <summary>Dew on the glass. [g/(m² h)]</summary>
    public double GlassDewGm2H { get; init; }

    /// <summary>[ppm]</summary>
    public double CarbonDioxidePpm { get; init; }

    /// <summary>[°C]</summary>
    public double PipeC { get; init; }

    /// <summary>[°C]</summary>
    public double HeatingSetPointC { get; init; }

    /// <summary>[%]</summary>
    public double LeePct { get; init; }

    /// <summary>[%]</summary>
    public double WindPct { get; init; }

    /// <summary>[%]</summary>
    public double ScreenPct { get; init; }

    /// <summary>Share of the floor under leaves. [1]</summary>
    public double Cover { get; init; }

    /// <summary>Mean moisture level of the pots, 1 to 5. [1]</summary>
    public double PotLevel { get; init; }

    /// <summary>Air temperature minus dew point of the house air. [K]</summary>
    public double AirMarginK => AirC - DewPointC;
}
