using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>One look at one pot.</summary>
/// <param name="At">When.</param>
/// <param name="Bench">Bench as first written; empty where none was.</param>
/// <param name="Pot">Pot or plant; empty where none was.</param>
/// <param name="Grader">Who; empty where nobody signed.</param>
/// <param name="Level">Level as graded, 1 to 5; null where none was.</param>
/// <param name="ByWeight">Level that the pot's weight tells; null without weight, or without the nursery file's dry and soaked pot.</param>
/// <param name="Fraction">Fraction of container capacity by weight; null likewise. [1]</param>
/// <param name="Leaves">How its leaves stood.</param>
/// <param name="MediumC">Temperature of the medium, or null. [°C]</param>
internal sealed record PotCheck(Instant At, string Bench, string Pot, string Grader, double? Level, double? ByWeight, double? Fraction, LeafSign Leaves, double? MediumC)
{
    /// <summary>The level graded, else that by weight; null without either.</summary>
    public double? Moisture => Level ?? ByWeight;

    /// <summary>Whether it is a dry-down: level 1, or leaves that hang or are limp.</summary>
    public bool IsDryDown => Moisture <= 1 || Leaves >= LeafSign.SevereFlagging;
}
