namespace ClimateLens.Science.Wetness;

/// <summary>Where the water of a film came from and went, over the steps in which the film was known.</summary>
/// <param name="StartMm">Film when it first was known. [mm]</param>
/// <param name="EndMm">Film when it last was known. [mm]</param>
/// <param name="WateredMm">Water put onto the leaves. [mm]</param>
/// <param name="CondensedMm">Dew. [mm]</param>
/// <param name="EvaporatedMm">Water evaporated. [mm]</param>
/// <param name="DrippedMm">Water beyond what a leaf holds. [mm]</param>
/// <param name="LostMm">Film dropped because the data no longer tell it, less film taken up when they tell it again. [mm]</param>
public readonly record struct FilmBudget(
    double StartMm, double EndMm, double WateredMm, double CondensedMm, double EvaporatedMm, double DrippedMm, double LostMm)
{
    /// <summary>What the account lacks: change less in plus out; 0 but for rounding. [mm]</summary>
    public double ErrorMm => EndMm - StartMm - WateredMm - CondensedMm + EvaporatedMm + DrippedMm + LostMm;
}
