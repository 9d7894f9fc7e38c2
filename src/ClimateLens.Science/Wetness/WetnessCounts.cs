namespace ClimateLens.Science.Wetness;

/// <summary>An opinion on wet leaves against another, counted in hours in which both speak.</summary>
/// <param name="Hits">Both say wet. [h]</param>
/// <param name="Misses">Only the reference says wet. [h]</param>
/// <param name="FalseAlarms">Only the opinion says wet. [h]</param>
/// <param name="CorrectDry">Both say dry. [h]</param>
/// <remarks>Shares are NaN where there is nothing to count.</remarks>
public readonly record struct WetnessCounts(double Hits, double Misses, double FalseAlarms, double CorrectDry)
{
    /// <summary>Hours counted. [h]</summary>
    public double Hours => Hits + Misses + FalseAlarms + CorrectDry;

    /// <summary>Share of all hours told right. [1]</summary>
    public double Right => (Hits + CorrectDry) / Hours;

    /// <summary>Share of the wet hours told as wet. [1]</summary>
    public double HitShare => Hits / (Hits + Misses);

    /// <summary>Share of the hours told as wet that were dry. [1]</summary>
    public double FalseAlarmShare => FalseAlarms / (Hits + FalseAlarms);

    /// <summary>Hours a day told as wet too many; negative for too few. [h/d]</summary>
    public double BiasHoursADay => 24 * (FalseAlarms - Misses) / Hours;

    /// <summary>Agreement beyond chance, Cohen's kappa: 1 for all, 0 for no more than chance. [1]</summary>
    /// <remarks><b>Formula:</b> <c>(p - pe)/(1 - pe)</c>. <b>Source:</b> [COHEN60], from memory. NaN where both always say the same one thing.</remarks>
    public double Kappa
    {
        get
        {
            double told = (Hits + FalseAlarms) / Hours, wetShare = (Hits + Misses) / Hours;
            double chance = (told * wetShare) + ((1 - told) * (1 - wetShare));
            return (Right - chance) / (1 - chance);
        }
    }

    /// <summary>Counts an opinion against a reference.</summary>
    /// <param name="opinion">1 for wet, 0 for dry, NaN for no opinion.</param>
    /// <param name="reference">The same of the reference.</param>
    /// <param name="stepSeconds">Length of a step, above 0 to 86400. [s]</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The step is impossible.</exception>
    /// <remarks>Steps in which either is silent are left out. Allocates nothing.</remarks>
    public static WetnessCounts Of(ReadOnlySpan<double> opinion, ReadOnlySpan<double> reference, double stepSeconds)
    {
        Guard.SameLength(opinion.Length, reference.Length);
        double step = Guard.AboveUpTo(Guard.Finite(stepSeconds), 0, 86400, "s") / 3600;
        int hits = 0, misses = 0, alarms = 0, dry = 0;
        for (int i = 0; i < opinion.Length; i++)
        {
            switch (opinion[i], reference[i])
            {
                case (1, 1):
                    hits++;
                    break;
                case (0, 1):
                    misses++;
                    break;
                case (1, 0):
                    alarms++;
                    break;
                case (0, 0):
                    dry++;
                    break;
            }
        }

        return new(hits * step, misses * step, alarms * step, dry * step);
    }

    internal WetnessCounts Plus(in WetnessCounts other) =>
        new(Hits + other.Hits, Misses + other.Misses, FalseAlarms + other.FalseAlarms, CorrectDry + other.CorrectDry);
}
