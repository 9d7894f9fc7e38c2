namespace ClimateLens.Science.Balance;

/// <summary>What drives the vapour balance of a house, as columns of one value a step; NaN where not known, an empty column for what is not logged.</summary>
/// <remarks>A step's drivers hold over the step; its humidity is that at its end.</remarks>
public sealed record BalanceInputs
{
    /// <summary>Length of a step, above 0 to 1. [h]</summary>
    public required double StepHours { get; init; }

    /// <summary>Air volume over floor area, 1 to 12. [m]</summary>
    /// <remarks>Scales all parameters and hides in them: a wrong height changes no humidity. 4 m is an assumption where it is not told.</remarks>
    public double HeightM { get; init; } = 4;

    /// <summary>Local day of each step, any number that rises from day to day; free runs start anew with each.</summary>
    public required ReadOnlyMemory<int> Day { get; init; }

    /// <summary>Absolute humidity of the house air, measured. [g/m³]</summary>
    public required ReadOnlyMemory<double> HumidityGm3 { get; init; }

    /// <summary>Air temperature of the house. [°C]</summary>
    public required ReadOnlyMemory<double> AirC { get; init; }

    /// <summary>Absolute humidity of the air outside. [g/m³]</summary>
    public required ReadOnlyMemory<double> OutsideGm3 { get; init; }

    /// <summary>Sun over the crop, inside. [W/m²]</summary>
    public ReadOnlyMemory<double> SunWm2 { get; init; }

    /// <summary>Ground cover, 0 to 1; full where empty. [1]</summary>
    public ReadOnlyMemory<double> Cover { get; init; }

    /// <summary>Mean opening of the vents, 0 to 1. [1]</summary>
    public ReadOnlyMemory<double> Vent { get; init; }

    /// <summary>Wind outside. [m/s]</summary>
    public ReadOnlyMemory<double> WindMs { get; init; }

    /// <summary>Speed of the fans, 0 to 1. [1]</summary>
    public ReadOnlyMemory<double> Fan { get; init; }

    /// <summary>Temperature of the inside of the cover. [°C]</summary>
    public ReadOnlyMemory<double> CoverC { get; init; }

    /// <summary>Share of the house in which leaves are watered in this step, see <see cref="WettedShare"/>. [1]</summary>
    public ReadOnlyMemory<double> LeafWetted { get; init; }

    /// <summary>Share of the house in which the floor alone is watered in this step. [1]</summary>
    public ReadOnlyMemory<double> FloorWetted { get; init; }

    /// <summary>Number of steps.</summary>
    public int Steps => HumidityGm3.Length;

    internal void Check()
    {
        Guard.AboveUpTo(StepHours, 0, 1, "h");
        Guard.Within(HeightM, 1, 12, "m");
        Guard.SameLength(Steps, Day.Length);
        Guard.SameLength(Steps, AirC.Length);
        Guard.SameLength(Steps, OutsideGm3.Length);
        SameOrEmpty(SunWm2, nameof(SunWm2));
        SameOrEmpty(Cover, nameof(Cover));
        SameOrEmpty(Vent, nameof(Vent));
        SameOrEmpty(WindMs, nameof(WindMs));
        SameOrEmpty(Fan, nameof(Fan));
        SameOrEmpty(CoverC, nameof(CoverC));
        SameOrEmpty(LeafWetted, nameof(LeafWetted));
        SameOrEmpty(FloorWetted, nameof(FloorWetted));
    }

    private void SameOrEmpty(ReadOnlyMemory<double> column, string name)
    {
        if (!column.IsEmpty)
        {
            Guard.SameLength(Steps, column.Length, name);
        }
    }
}
