namespace ClimateLens.Analysis.Care;

/// <summary>Which records speak of a growth regulator: by the words of purpose or work, or by the active ingredient.</summary>
/// <remarks><b>Source:</b> names of active ingredients from memory; the list is open, so write "growth regulator" as purpose.</remarks>
internal static class GrowthRegulators
{
    private static readonly string[] Words = ["growth regul", "growth retard", "growth control", "height control", "pgr"];
    private static readonly string[] Ingredients = ["paclobutrazol", "uniconazole", "flurprimidol", "ancymidol", "daminozide", "chlormequat", "ethephon"];

    /// <summary>Whether any of the texts speaks of one.</summary>
    public static bool Named(params ReadOnlySpan<string> texts)
    {
        foreach (string text in texts)
        {
            if (Words.Concat(Ingredients).Any(word => text.Contains(word, StringComparison.OrdinalIgnoreCase)))
            {
                return true;
            }
        }

        return false;
    }
}
