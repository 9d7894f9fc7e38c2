using System.Collections.Immutable;
using System.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Reports.Notebooks;

/// <summary>The notebooks of a nursery: those that came with the program, with the nursery's own in their place or beside them.</summary>
/// <param name="Own">The nursery's own sound notebooks by name.</param>
/// <param name="Problems">What is wrong with the nursery's own; a notebook with a fault is left out, and a built-in one of its name stands.</param>
public sealed record NotebookFolder(ImmutableSortedDictionary<string, Notebook> Own, ImmutableArray<Problem> Problems)
{
    private const string Ending = ".md";

    /// <summary>Those that came with the program.</summary>
    public static NotebookFolder BuiltIn { get; } = new(ImmutableSortedDictionary.Create<string, Notebook>(StringComparer.Ordinal), []);

    /// <summary>Sound notebooks by name, read when first asked for: a run that finds nothing to do needs none that came with the program.</summary>
    public ImmutableSortedDictionary<string, Notebook> All => BuiltInNotebooks.All.SetItems(Own);

    /// <summary>Reads a nursery's own notebooks.</summary>
    /// <param name="folder">Their folder, full path.</param>
    /// <param name="shown">How messages name it.</param>
    /// <param name="isAsked">Whether the nursery file names the folder: then it must be there.</param>
    public static NotebookFolder Read(string folder, string shown, bool isAsked)
    {
        if (!Directory.Exists(folder))
        {
            return isAsked
                ? BuiltIn with { Problems = [new Problem("notebook.folder", Severity.Warning, shown, null, null, "there is no such folder", "a folder with notebooks", "make it, or take notebooks out of the nursery file; the built-in ones stand.")] }
                : BuiltIn;
        }

        var own = BuiltIn.Own.ToBuilder();
        List<Problem> problems = [];
        foreach (string path in Directory.GetFiles(folder, "*" + Ending).Order(StringComparer.Ordinal))
        {
            string name = Path.GetFileNameWithoutExtension(path), file = $"{shown}/{Path.GetFileName(path)}";
            (Notebook? notebook, ImmutableArray<Problem> found) = ReadOne(name, path, file);
            problems.AddRange(found.Select(p => p with { Severity = Severity.Warning })); // the rest of the run stands
            if (notebook is not null)
            {
                own[name] = notebook;
            }
        }

        return new NotebookFolder(own.ToImmutable(), [.. problems]);
    }

    /// <summary>Reads one notebook file.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="path">Where it lies.</param>
    /// <param name="file">How messages name it.</param>
    public static (Notebook? Notebook, ImmutableArray<Problem> Problems) ReadOne(string name, string path, string file)
    {
        try
        {
            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path));
            return NotebookReader.Read(name, file, text);
        }
        catch (DecoderFallbackException)
        {
            return (null, [new Problem("notebook.fault", Severity.Error, file, 1, null, "bytes that are no UTF-8", "UTF-8 text", "save it as UTF-8.")]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return (null, [new Problem("notebook.folder", Severity.Error, file, null, null, $"it cannot be read: {fault.Message}", "", "look at its permissions.")]);
        }
    }

    /// <summary>Notebooks of one kind, the built-in one of the kind's own name first.</summary>
    public ImmutableArray<Notebook> For(NotebookKind kind)
        => [.. All.Values.Where(n => n.For == kind).OrderBy(n => !n.IsMain).ThenBy(n => n.Name, StringComparer.Ordinal)];
}
