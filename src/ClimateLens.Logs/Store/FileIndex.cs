using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Store;

/// <summary>
/// A part names only the files that its rows came from, in the order of their hashes: so its bytes do not depend on
/// what else was imported, nor on when.
/// </summary>
internal static class FileIndex
{
    /// <summary>The files in use and, for each row, its place among them.</summary>
    public static (List<SourceFile> Files, int[] Index) Compact(YearRows rows, IReadOnlyList<SourceFile> files)
        => Compact(rows.File.AsSpan(0, rows.Count), files);

    /// <summary>The files in use and, for each row, its place among them.</summary>
    public static (List<SourceFile> Files, int[] Index) Compact(ReadOnlySpan<int> rowFiles, IReadOnlyList<SourceFile> files)
    {
        bool[] used = new bool[files.Count];
        foreach (int file in rowFiles)
        {
            used[file] = true;
        }

        int[] order = [.. Enumerable.Range(0, files.Count).Where(i => used[i]).OrderBy(i => files[i].Sha256, StringComparer.Ordinal)];
        int[] place = new int[files.Count];
        for (int i = 0; i < order.Length; i++)
        {
            place[order[i]] = i;
        }

        int[] index = new int[rowFiles.Length];
        for (int i = 0; i < index.Length; i++)
        {
            index[i] = place[rowFiles[i]];
        }

        return ([.. order.Select(i => files[i])], index);
    }

    /// <summary>Points the rows of a part into the source's list; files that the list lacks are added.</summary>
    public static void Expand(Span<int> rowFiles, List<SourceFile> partFiles, List<SourceFile> sourceFiles)
    {
        int[] place = new int[partFiles.Count];
        for (int i = 0; i < place.Length; i++)
        {
            place[i] = sourceFiles.FindIndex(f => f.Sha256 == partFiles[i].Sha256);
            if (place[i] < 0)
            {
                place[i] = sourceFiles.Count;
                sourceFiles.Add(partFiles[i]);
            }
        }

        foreach (ref int file in rowFiles)
        {
            file = place[file];
        }
    }
}
