using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Records;
using ClimateLens.Nursery.Records;
using Parquet;

namespace ClimateLens.Logs.Store;

/// <summary>Reads parts of a store and holds each to the hash in the ledger.</summary>
/// <param name="folder">The store.</param>
internal sealed class PartReader(string folder)
{
    /// <summary>Whether a file is there, in its size; a glance, not a proof.</summary>
    public bool LooksWhole(StoredFile stored)
    {
        var file = new FileInfo(Path.Combine(folder, stored.Path));
        return file.Exists && file.Length == stored.Size;
    }

    /// <summary>Whether a file is there and has the bytes that were written.</summary>
    public bool IsAsWritten(StoredFile stored) => ContentHash.OfFile(Path.Combine(folder, stored.Path)) == stored.Sha256;

    /// <summary>The bytes of a small file of the store; null when it is missing or not what the ledger says.</summary>
    public byte[]? Whole(StoredFile stored)
    {
        try
        {
            byte[] bytes = File.ReadAllBytes(Path.Combine(folder, stored.Path));
            return ContentHash.Of(bytes) == stored.Sha256 ? bytes : null;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    /// <summary>Reads a year of readings.</summary>
    /// <exception cref="DamagedPartException">It is not what the ledger says.</exception>
    public (YearRows Rows, List<SourceFile> Files) Readings(LedgerPart part) => Read(part, ReadingPart.Read);

    /// <summary>The rows of a year of readings, which point into the source's list of files: in memory where they fit, else from the file as they are walked over.</summary>
    /// <param name="part">The part.</param>
    /// <param name="files">The source's files; those that it lacks are added.</param>
    /// <param name="memory">Most memory. [bytes]</param>
    /// <exception cref="DamagedPartException">It is not what the ledger says.</exception>
    public SortedRows Rows(LedgerPart part, List<SourceFile> files, long memory)
    {
        string path = Path.Combine(folder, part.Stored.Path);
        try
        {
            if (!IsAsWritten(part.Stored))
            {
                throw new DamagedPartException(part.Stored.Path);
            }

            PartRows rows = Look(part, path, files);
            return YearRows.BytesOfRow(rows.Names.Length) * (long)part.Rows > memory ? rows : InMemory(rows);
        }
        catch (Exception e) when (e is IOException or InvalidDataException or ParquetException)
        {
            throw new DamagedPartException(part.Stored.Path, e);
        }
    }

    private static PartRows Look(LedgerPart part, string path, List<SourceFile> files)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read);
        using var footer = PartFooter.Open(stream);
        return new PartRows(path, ReadingPart.NamesIn(footer), part.Rows, part.First, part.Last, FileIndex.PlacesOf(footer.Files, files));
    }

    private static MemoryRows InMemory(PartRows rows)
    {
        var memory = new MemoryRows(rows.Names);
        foreach (YearRows block in rows.Blocks(isKept: true))
        {
            memory.Add(block);
        }

        return memory;
    }

    /// <summary>Reads the records of a house.</summary>
    /// <exception cref="DamagedPartException">It is not what the ledger says.</exception>
    public (List<StoredRecord> Records, List<SourceFile> Files) Records(LedgerPart part, RecordKind kind)
        => Read(part, stream => RecordPart.Read(stream, part.House, kind));

    private T Read<T>(LedgerPart part, Func<Stream, T> read)
    {
        try
        {
            byte[] bytes = File.ReadAllBytes(Path.Combine(folder, part.Stored.Path));
            if (ContentHash.Of(bytes) != part.Stored.Sha256)
            {
                throw new DamagedPartException(part.Stored.Path);
            }

            using var stream = new MemoryStream(bytes, writable: false);
            return read(stream);
        }
        catch (Exception e) when (e is IOException or InvalidDataException or ParquetException)
        {
            throw new DamagedPartException(part.Stored.Path, e);
        }
    }
}
