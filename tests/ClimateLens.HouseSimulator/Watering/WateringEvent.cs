namespace ClimateLens.HouseSimulator.Watering;

/// <summary>Water given to one bench.</summary>
/// <param name="StartMinute">Minute of the simulation at which it starts. [min]</param>
/// <param name="Minutes">How long it runs; above zero. [min]</param>
/// <param name="Method"><c>overheadBoom</c>, <c>hose</c> or <c>drip</c>.</param>
/// <param name="LitresPerM2">Water over the bench it serves. [L/m²]</param>
/// <param name="Bench">A or B: each is half of the house; empty for all of it.</param>
/// <param name="Note">What the grower wrote.</param>
public sealed record WateringEvent(int StartMinute, int Minutes, string Method, double LitresPerM2, string Bench, string Note)
{
    public int EndMinute => StartMinute + Minutes;

    /// <summary>Whether the water falls on the leaves.</summary>
    public bool IsOverhead => Method != "drip";

    /// <summary>Share of the house that it serves. [1]</summary>
    public double Share => Bench.Length == 0 ? 1 : 0.5;
}
