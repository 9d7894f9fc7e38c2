using System.Collections.Concurrent;
using System.Reflection;

namespace ClimateLens.Nursery;

/// <summary>
/// Fingerprints of this program's code. A deterministic build gives an assembly a new module id exactly when its code changes, so that
/// after a change of code all it makes is made again, and no more. A program that is machine code as a whole has no modules, and one compiled
/// together with its runtime has others: these are told at their build what an ordinary one of the same code would say.
/// </summary>
public static class CodeAccount
{
    private const string Own = "ClimateLens.", Option = "ClimateLens.Code.";
    private static readonly ConcurrentDictionary<Assembly, string> Known = [];

    /// <summary>Of an assembly and of those of ClimateLens below it, as lower-case hex.</summary>
    public static string Of(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        return Known.GetOrAdd(assembly, Reckoned);
    }

    private static string Reckoned(Assembly assembly)
    {
        if (AppContext.GetData(Option + assembly.GetName().Name) is string told)
        {
            return told;
        }

        SortedDictionary<string, Guid> modules = new(StringComparer.Ordinal);
        Collect(assembly, modules);
        return Digest.OfText(string.Join('\n', modules.Select(m => $"{m.Key} {m.Value}")));
    }

    private static void Collect(Assembly assembly, SortedDictionary<string, Guid> modules)
    {
        if (!modules.TryAdd(assembly.GetName().Name!, assembly.ManifestModule.ModuleVersionId))
        {
            return;
        }

        foreach (AssemblyName reference in assembly.GetReferencedAssemblies().Where(r => r.Name!.StartsWith(Own, StringComparison.Ordinal)))
        {
            Collect(Assembly.Load(reference), modules);
        }
    }
}
