namespace ClimateLens.Science.Matching;

/// <summary>How alike events and stretches are in one covariate.</summary>
/// <param name="Name">Name of the covariate.</param>
/// <param name="Before">Standardised difference of the matched events from all untreated stretches. [standard deviations]</param>
/// <param name="After">That from the stretches they were matched with. [standard deviations]</param>
/// <remarks>
/// <para><b>Formula:</b> mean of the events less mean of the stretches, over the standard deviation of all untreated stretches; for the hour of the day about the
/// difference in hours, never negative. NaN without matched events.</para>
/// <para><b>Source:</b> [RR85], from memory; above 0.25 in size the comparison leans on a like that is none ([STUART10], from memory).</para>
/// </remarks>
public sealed record CovariateBalance(string Name, double Before, double After);
