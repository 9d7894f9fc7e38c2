using System.Globalization;

namespace ClimateLens.Logs.Times;

/// <summary>The step that readings keep, or are meant to keep.</summary>
/// <param name="Seconds">Length of the step; 0 when there are too few readings. [s]</param>
/// <param name="Share">Share of the distances of neighbours that are this step to the second. [0..1]</param>
/// <param name="StraySeconds">How far stamps stray around a regular step; 0 where they do not, or keep no regular step. [s]</param>
internal readonly record struct NominalStep(int Seconds, double Share, double StraySeconds)
{
    /// <summary>Whether the stamps stray around the step.</summary>
    public bool Strays => StraySeconds > 0;

    /// <summary>For example "a step of 5 min, stamps stray by up to 60 s; 51 % of them are 5 min apart".</summary>
    public override string ToString()
    {
        string step = Seconds % 60 == 0 ? string.Create(CultureInfo.InvariantCulture, $"{Seconds / 60} min") : string.Create(CultureInfo.InvariantCulture, $"{Seconds} s");
        return string.Create(CultureInfo.InvariantCulture, $"a step of {step}; stamps stray by up to {StraySeconds:0.#} s, and {Share * 100:0} % are {step} apart");
    }
}
