using System.Collections.Immutable;
using System.Reflection;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Reports.Notebooks;

/// <summary>The notebooks that come with the program: those of reports/notebooks in the source.</summary>
public static class BuiltInNotebooks
{
    private const string Prefix = "notebooks/", Ending = ".md";

    private static readonly Assembly Home = typeof(BuiltInNotebooks).Assembly;

    private static readonly Lazy<ImmutableSortedDictionary<string, Notebook>> Read = new(() => Names.ToImmutableSortedDictionary(name => name, Parse, StringComparer.Ordinal));

    /// <summary>Their names, in order.</summary>
    public static ImmutableArray<string> Names { get; } =
    [
        .. Home.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..^Ending.Length]).Order(StringComparer.Ordinal),
    ];

    /// <summary>All of them by name.</summary>
    public static ImmutableSortedDictionary<string, Notebook> All => Read.Value;

    /// <summary>The text of one.</summary>
    public static string TextOf(string name)
    {
        using Stream stream = Home.GetManifestResourceStream($"{Prefix}{name}{Ending}") ?? throw new ArgumentException($"There is no built-in notebook \"{name}\".", nameof(name));
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    private static Notebook Parse(string name)
    {
        (Notebook? notebook, ImmutableArray<Problem> problems) = NotebookReader.Read(name, $"{name}{Ending}", TextOf(name));
        return notebook is null ? throw new InvalidOperationException(string.Join(' ', problems)) : notebook with { BuiltIn = true };
    }
}
