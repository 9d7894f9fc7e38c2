namespace ClimateLens.Science.Matching;

/// <summary>The same comparison where nothing was done: how often it cries wolf.</summary>
/// <param name="Sets">Sets of pseudo-events tried.</param>
/// <param name="RejectionRate">Share of sets whose 5 to 95 % range leaves out 0; one in ten would be honest; NaN where there are too few stretches to try. [1]</param>
/// <param name="MeanEffect">Mean effect over all sets, in the unit of the outcome; what is not 0 here is bias.</param>
/// <remarks><b>Error:</b> a rate of 0.1 out of a hundred sets is good to 0.03, less where the sets share their stretches, as they must in a few weeks.</remarks>
public readonly record struct PlaceboTest(int Sets, double RejectionRate, double MeanEffect)
{
    /// <summary>Not tried.</summary>
    public static PlaceboTest Untried { get; } = new(0, double.NaN, double.NaN);
}
