using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Import;

/// <summary>The rows of one source while files are imported into it.</summary>
internal abstract class SourceContent
{
    /// <summary>Files that rows point to, by their place.</summary>
    public List<SourceFile> Files { get; } = [];

    /// <summary>Whether anything changed since the last save.</summary>
    public abstract bool IsChanged { get; }

    /// <summary>The place of a file in <see cref="Files"/>; added when it is new.</summary>
    public int IndexOf(SourceFile file)
    {
        int index = Files.FindIndex(f => f.Sha256 == file.Sha256);
        if (index < 0)
        {
            index = Files.Count;
            Files.Add(file);
        }

        return index;
    }

    /// <summary>Reads a file and lays it over what is there; false when nothing of it can be taken, which is reported.</summary>
    public abstract bool Take(OpenedExport opened, SourceFile file, SetAsideLog aside, RowCounts counts);

    /// <summary>After all files were read again: keeps the rows of files that are gone, where nothing newer speaks. Returns how many.</summary>
    public abstract int KeepOld(IReadOnlyList<LedgerPart> oldParts, IReadOnlySet<string> goneHashes, PartReader reader, ICollection<string> damaged);

    /// <summary>Writes what changed; returns all parts of the source.</summary>
    public abstract List<LedgerPart> Save(StoreTransaction transaction);
}
