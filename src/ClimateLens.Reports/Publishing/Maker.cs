using System.Reflection;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;

namespace ClimateLens.Reports.Publishing;

/// <summary>What makes reviews and pages, as fingerprints of the code at work and of the options.</summary>
internal static class Maker
{
    /// <summary>What makes reviews: the analysis and all below it, and the language of what they say.</summary>
    public static string OfReviews(PageOptions options) => Hash(typeof(Review).Assembly, options.Language.Code);

    /// <summary>What makes pages out of reviews, but for the notebooks.</summary>
    public static string OfPages(PageOptions options) => Hash(typeof(Maker).Assembly, $"{options.Units}\n{options.Language.Code}\n{options.Store}\n{options.Ipynb}\n{options.SingleFile}");

    /// <summary>What makes the whole site. The built-in notebooks are part of their assembly.</summary>
    public static string OfSite(PageOptions options)
        => Hash(typeof(Maker).Assembly, $"{OfPages(options)}\n{string.Join('\n', options.Notebooks.Own.Values.Select(n => $"{n.Name} {n.Hash}"))}");

    private static string Hash(Assembly assembly, string options) => Digest.OfText($"{CodeAccount.Of(assembly)}\n{options}");
}
