using System.IO.Enumeration;
using ClimateLens.Logs.Describe.Reading;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>The key <c>files</c>: the paths, or one pattern that takes them all and no other file of their folder.</summary>
internal static class FilePattern
{
    /// <summary>The key.</summary>
    /// <param name="files">The files.</param>
    /// <param name="folder">Folder against which paths count; null: paths as the user gave them.</param>
    public static DraftKey Of(IReadOnlyList<SourceText> files, string? folder)
    {
        if (files.Any(f => f.IsPiped))
        {
            return new DraftKey("files", ["[\"exports/*.csv\"]"], Sureness.Unsure, "it came through a pipe: where will the files lie?");
        }

        files = [.. files.DistinctBy(f => f.Path)];
        string[] paths = [.. files.Select(f => PathOf(f, folder))];
        if (paths.Length == 1)
        {
            return DraftKey.Of("files", TomlText.List(paths), null, "a * in the name takes the files to come as well");
        }

        string? pattern = Pattern(files, paths);
        return pattern is null ? DraftKey.Of("files", TomlText.List(paths)) : DraftKey.Of("files", TomlText.List([pattern]), Sureness.Likely, $"takes these {paths.Length} files and no other of their folder so far");
    }

    private static string PathOf(SourceText file, string? folder)
    {
        string path = folder is null ? file.FileName : Path.GetRelativePath(folder, file.Path);
        return path.Replace('\\', '/');
    }

    private static string? Pattern(IReadOnlyList<SourceText> files, string[] paths)
    {
        string[] folders = [.. paths.Select(p => p[..(p.LastIndexOf('/') + 1)]).Distinct()];
        string[] names = [.. paths.Select(p => p[(p.LastIndexOf('/') + 1)..])];
        if (folders.Length != 1)
        {
            return null;
        }

        int start = Shared(names, i => i);
        int end = Shared(names, i => -1 - i);
        int shortest = names.Min(n => n.Length);
        if (start + end > shortest)
        {
            end = shortest - start;
        }

        // A pattern that ends within a number would take other numbers too: cut back to where digits begin.
        while (start > 0 && char.IsAsciiDigit(names[0][start - 1]))
        {
            start--;
        }

        while (end > 0 && char.IsAsciiDigit(names[0][^end]))
        {
            end--;
        }

        string pattern = $"{names[0][..start]}*{names[0][^end..]}";
        string? parent = Path.GetDirectoryName(Path.GetFullPath(files[0].Path));
        var known = names.ToHashSet(StringComparer.Ordinal);
        bool others = parent is null || Directory.EnumerateFiles(parent).Select(Path.GetFileName).Any(name => FileSystemName.MatchesSimpleExpression(pattern, name!, ignoreCase: false) && !known.Contains(name!));
        return others || start + end == 0 ? null : folders[0] + pattern;
    }

    private static int Shared(string[] names, Func<int, int> place)
    {
        int length = 0;
        int shortest = names.Min(n => n.Length);
        while (length < shortest && names.Select(n => n[place(length) < 0 ? n.Length + place(length) : place(length)]).Distinct().Count() == 1)
        {
            length++;
        }

        return length;
    }
}
