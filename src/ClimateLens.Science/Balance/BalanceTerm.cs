namespace ClimateLens.Science.Balance;

/// <summary>Parameters of the vapour balance of a house; <see cref="TermCatalogue"/> has unit, bounds and source of each.</summary>
public enum BalanceTerm
{
    /// <summary>Vapour from leaves for each W/m² of sun over the crop, at full cover.</summary>
    SunTranspiration,

    /// <summary>Vapour from leaves for each g/m³ that the air could still take up, at full cover.</summary>
    AirTranspiration,

    /// <summary>Exchange with the outside when all is shut and the air outside is still.</summary>
    Leak,

    /// <summary>What each m/s of wind adds to the leak.</summary>
    WindLeak,

    /// <summary>Exchange by wide open vents in still air.</summary>
    VentStill,

    /// <summary>What each m/s of wind adds to that.</summary>
    VentWind,

    /// <summary>Exchange by fans at full speed.</summary>
    Fan,

    /// <summary>Dew on the cover: air that gives its surplus vapour off there.</summary>
    CoverCondensation,

    /// <summary>Water that a leaf-wetting watering of the whole house leaves on leaves and floor to evaporate.</summary>
    LeafStore,

    /// <summary>Evaporation of that water for each g/m³ that the air could still take up, just watered.</summary>
    LeafEvaporation,

    /// <summary>What each W/m² of sun over the crop is worth to a wet surface as a deficit of the air.</summary>
    SunDrying,

    /// <summary>Water that a watering which wets the floor alone leaves there to evaporate.</summary>
    FloorStore,

    /// <summary>Evaporation of that water for each g/m³ that the air could still take up, just watered.</summary>
    FloorEvaporation,
}
