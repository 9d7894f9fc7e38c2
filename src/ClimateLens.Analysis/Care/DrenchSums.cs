namespace ClimateLens.Analysis.Care;

/// <summary>The sums of a <see cref="DrenchPlan"/>; null where it does not tell enough.</summary>
/// <param name="SolutionLitres">Solution to mix. [L]</param>
/// <param name="MilligramPerPot">Active ingredient a pot. [mg]</param>
/// <param name="InPotsG">Active ingredient in all pots together, without the overage. [g]</param>
/// <param name="Minutes">Time of an emitter. [min]</param>
/// <param name="LowQuarterUniformityPct">Distribution uniformity of the low quarter. [%]</param>
/// <param name="ChristiansenPct">Christiansen's coefficient. [%]</param>
/// <param name="EmissionUniformityPct">Emission uniformity with one emitter a pot. [%]</param>
/// <param name="LowShare">Dose of the driest quarter of the pots over the mean. [1]</param>
/// <param name="HighShare">Dose of the wettest quarter over the mean. [1]</param>
public sealed record DrenchSums(
    double SolutionLitres,
    double? MilligramPerPot,
    double? InPotsG,
    double? Minutes,
    double? LowQuarterUniformityPct,
    double? ChristiansenPct,
    double? EmissionUniformityPct,
    double? LowShare,
    double? HighShare);
