using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace ClimateLens.Nursery;

/// <summary>
/// Fingerprints of this program's code. A deterministic build gives an assembly a new module id exactly when its code changes, so that
/// after a change of code all it makes is made again, and no more. A program that is machine code as a whole has no modules, and one compiled
/// together with its runtime has others: these are told at their build what an ordinary one of the same code would say.
/// </summary>
public static class CodeAccount
{
    private const string Own = "ClimateLens.", Option = "ClimateLens.Code.";

    /// <summary>Of an assembly and of those of ClimateLens below it, as lower-case hex.</summary>
    public static string Of(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        if (AppContext.GetData(Option + assembly.GetName().Name) is string told)
        {
            return told;
        }

        SortedDictionary<string, Guid> modules = new(StringComparer.Ordinal);
        Collect(assembly, modules);
        string text = string.Join('\n', modules.Select(m => $"{m.Key} {m.Value}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
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
