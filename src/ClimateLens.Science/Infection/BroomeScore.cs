namespace ClimateLens.Science.Infection;

/// <summary>Score of a wet period by <see cref="Broome"/>: weather that favours grey mould.</summary>
/// <param name="Index">Logit of the share of grape berries infected; minus infinity where the equation does not speak; NaN for not known. [1]</param>
/// <param name="BerryShare">Share of grape berries that such a period infected in the trials; says nothing of the share of an ornamental crop. [1]</param>
/// <param name="Grade">Grade by the index.</param>
/// <param name="TemperatureUsedC">Temperature put into the equation. [°C]</param>
/// <param name="HoursUsed">Wet hours put into the equation. [h]</param>
/// <param name="OutsideFit">Whether temperature or hours lie outside those of the trials, so that the score is a stretch of the equation.</param>
public readonly record struct BroomeScore(
    double Index, double BerryShare, Grade Grade, double TemperatureUsedC, double HoursUsed, bool OutsideFit)
{
    internal static BroomeScore Unknown { get; } = new(double.NaN, double.NaN, Grade.NotKnown, double.NaN, double.NaN, false);
}
