namespace ClimateLens.HouseSimulator.Physics;

/// <summary>Where a house's water and heat went since the start. Water in [kg/m²], heat in [J/m²].</summary>
public sealed class HouseBook
{
    public double Given { get; set; }

    public double Ventilated { get; set; }

    public double FloorDrained { get; set; }

    public double GlassDrained { get; set; }

    /// <summary>Water in pots and on leaves that left the house when plants were spaced out.</summary>
    public double MovedOut { get; set; }

    /// <summary>All water in the house when the book was opened.</summary>
    public double StoredAtStart { get; init; }

    public double HeatAtStart { get; init; }

    /// <summary>Heat that came in by sun, pipes and through the cover, less what water took up or gave back.</summary>
    public double HeatIn { get; set; }
}
