using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Publishing;

/// <summary>
/// What makes reviews and pages, as fingerprints of every ClimateLens assembly at work and of the options. A deterministic build
/// gives an assembly a new module id exactly when its code changes, so that after a change of code all it makes is made again, and no more.
/// A program that is machine code as a whole has no modules, and one compiled together with its runtime has others: these are told at their build what an ordinary
/// one of the same code would say.
/// </summary>
public static class Maker
{
    private const string Option = "ClimateLens.Maker.";

    /// <summary>Fingerprint of the code of an assembly and of those of ClimateLens below it, as lower-case hex.</summary>
    public static string CodeOf(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        if (AppContext.GetData(Option + assembly.GetName().Name) is string told)
        {
            return told;
        }

        SortedDictionary<string, Guid> modules = new(StringComparer.Ordinal);
        Collect(assembly, modules);
        return Hash(string.Join('\n', modules.Select(m => $"{m.Key} {m.Value}")));
    }

    /// <summary>What makes reviews: the analysis and all below it, and the language of what they say.</summary>
    internal static string OfReviews(PageOptions options) => Hash(typeof(Review).Assembly, options.Language.Code);

    /// <summary>What makes pages out of reviews, but for the notebooks.</summary>
    internal static string OfPages(PageOptions options) => Hash(typeof(Maker).Assembly, $"{options.Units}\n{options.Language.Code}\n{options.Store}\n{options.Ipynb}\n{options.SingleFile}");

    /// <summary>What makes the whole site. The built-in notebooks are part of their assembly.</summary>
    internal static string OfSite(PageOptions options)
        => Hash(typeof(Maker).Assembly, $"{OfPages(options)}\n{string.Join('\n', options.Notebooks.Own.Values.Select(n => $"{n.Name} {n.Hash}"))}");

    private static string Hash(Assembly assembly, string options) => Hash($"{CodeOf(assembly)}\n{options}");

    private static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static void Collect(Assembly assembly, SortedDictionary<string, Guid> modules)
    {
        if (!modules.TryAdd(assembly.GetName().Name!, assembly.ManifestModule.ModuleVersionId))
        {
            return;
        }

        foreach (AssemblyName reference in assembly.GetReferencedAssemblies())
        {
            if (reference.Name!.StartsWith("ClimateLens.", StringComparison.Ordinal))
            {
                Collect(Assembly.Load(reference), modules);
            }
        }
    }
}
