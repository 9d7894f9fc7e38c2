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
