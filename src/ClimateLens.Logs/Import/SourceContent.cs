using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Import;

/// <summary>The rows of one source while files are imported into it.</summary>
internal abstract class SourceContent
{
    /// <summary>Files that rows point to, by their place.</summary>
    public List<SourceFile> Files { get; } = [];

    /// <summary>Set after the ledger was lost: nobody knows which file was the later one, so what the store holds stands.</summary>
    public bool StoreStands { get; init; }

    /// <summary>Before any file is read: takes over rows of the store that came from some of its files. Returns the parts that cannot be read.</summary>
    public abstract List<string> StartFrom(IReadOnlyList<LedgerPart> old, Func<SourceFile, bool> from);

    /// <summary>Reads a file and lays it over what is there.</summary>
    public abstract Taken Take(FileBeingRead file);

    /// <summary>Number of rows that came from some files.</summary>
    public abstract int CountRows(Func<SourceFile, bool> from);

    /// <summary>Writes what changed; returns all parts of the source.</summary>
    public abstract List<LedgerPart> Save();

    /// <summary>The place of a file in <see cref="Files"/>, where its name stands alone as long as its hash is not known.</summary>
    protected int PlaceOf(FileBeingRead file)
    {
        int index = file.KnownHash is string hash ? Files.FindIndex(f => f.Sha256 == hash) : -1;
        if (index < 0)
        {
            index = Files.Count;
            Files.Add(new SourceFile(file.KnownHash ?? "", file.Name));
        }

        return index;
    }

    /// <summary>Places in <see cref="Files"/> of the versions of a file that it has taken the place of.</summary>
    protected HashSet<int> OtherVersions(FileBeingRead file, int index)
        => [.. Enumerable.Range(0, Files.Count).Where(i => i != index && Files[i].File == file.Name && !file.IsPresent(Files[i].Sha256))];
}
