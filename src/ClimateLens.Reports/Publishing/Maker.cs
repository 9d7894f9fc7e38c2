using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace ClimateLens.Reports.Publishing;

/// <summary>
/// What makes pages: a fingerprint of every ClimateLens assembly at work of the options and of the notebooks. A deterministic build
/// gives an assembly a new module id exactly when its code changes, so pages are made again after any change of code.
/// </summary>
internal static class Maker
{
    public static string Fingerprint(PageOptions options)
    {
        SortedDictionary<string, Guid> modules = new(StringComparer.Ordinal);
        Collect(typeof(Maker).Assembly, modules);
        string text = string.Join('\n', modules.Select(m => $"{m.Key} {m.Value}")) + "\n" + options.Units + "\n" + options.Language.Code + "\n" + options.Store + "\n" + string.Join('\n', options.Notebooks.All.Values.Select(n => $"{n.Name} {n.Hash}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }

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
