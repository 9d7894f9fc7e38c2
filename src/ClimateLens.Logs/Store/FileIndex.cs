using ClimateLens.Logs.Readings;

namespace ClimateLens.Logs.Store;

/// <summary>
/// A part names only the files that its rows came from, in the order of their hashes: so its bytes do not depend on
/// what else was imported, nor on when.
/// </summary>
internal static class FileIndex
{
    /// <summary>The files in use and, for each file of the source, its place among them, or -1.</summary>
    public static (List<SourceFile> Files, int[] Map) MapOf(SortedRows rows, IReadOnlyList<SourceFile> files)
    {
        bool[] used = new bool[files.Count];
        foreach (YearRows block in rows.Blocks())
        {
            Mark(block.File.AsSpan(0, block.Count), used);
        }

        return MapOf(used, files);
    }

    /// <summary>The files in use and, for each row, its place among them.</summary>
    public static (List<SourceFile> Files, int[] Index) Compact(ReadOnlySpan<int> rowFiles, IReadOnlyList<SourceFile> files)
    {
        bool[] used = new bool[files.Count];
        Mark(rowFiles, used);
        (List<SourceFile> named, int[] map) = MapOf(used, files);
        int[] index = new int[rowFiles.Length];
        for (int i = 0; i < index.Length; i++)
        {
            index[i] = map[rowFiles[i]];
        }

        return (named, index);
    }

    /// <summary>For each file of a part its place in the source's list; files that the list lacks are added.</summary>
    public static int[] PlacesOf(List<SourceFile> partFiles, List<SourceFile> sourceFiles)
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

        return place;
    }

    private static void Mark(ReadOnlySpan<int> rowFiles, bool[] used)
    {
        foreach (int file in rowFiles)
        {
            used[file] = true;
        }
    }

    private static (List<SourceFile> Files, int[] Map) MapOf(bool[] used, IReadOnlyList<SourceFile> files)
    {
        int[] order = [.. Enumerable.Range(0, files.Count).Where(i => used[i]).OrderBy(i => files[i].Sha256, StringComparer.Ordinal)];
        int[] map = new int[files.Count];
        Array.Fill(map, -1);
        for (int i = 0; i < order.Length; i++)
        {
            map[order[i]] = i;
        }

        return ([.. order.Select(i => files[i])], map);
    }
}
