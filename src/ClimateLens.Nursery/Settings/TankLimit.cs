namespace ClimateLens.Nursery.Settings;

/// <summary>Between what a reading of a tank has to lie. There are no usual values: water, crop and treatment differ.</summary>
/// <param name="What">What is read, as the records name it: free chlorine, ORP, UV …</param>
/// <param name="Tank">Name of the tank as the records have it; empty for every tank.</param>
/// <param name="Low">Lowest, or null.</param>
/// <param name="High">Highest, or null.</param>
/// <param name="Unit">Unit of both, as the records write it; empty: not compared.</param>
public sealed record TankLimit(string What, string Tank, double? Low, double? High, string Unit)
{
    /// <summary>Whether a reading lies within the limits, both included.</summary>
    public bool Holds(double reading) => !(reading < Low) && !(reading > High);
}
