namespace ClimateLens.Science.Balance;

/// <summary>What is known of a parameter before any reading.</summary>
/// <param name="Term">The parameter.</param>
/// <param name="Unit">Its unit, a square metre of floor.</param>
/// <param name="Low">Least value that physics allows.</param>
/// <param name="High">Greatest value that physics allows.</param>
/// <param name="Typical">Where the fit starts, and what it falls back on where the data say nothing.</param>
/// <param name="Source">Source of the bounds, by key of docs/references.md.</param>
public sealed record TermInfo(BalanceTerm Term, string Unit, double Low, double High, double Typical, string Source)
{
    /// <summary>Standard error of the typical value: as much again. A choice of this project.</summary>
    public double TypicalError => Typical;
}
