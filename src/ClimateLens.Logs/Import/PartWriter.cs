using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Import;

/// <summary>Writes a part and reads it back before it may come into force.</summary>
internal static class PartWriter
{
    /// <summary>Writes a staged part.</summary>
    /// <exception cref="StoreUnavailableException">What was written does not read back.</exception>
    public static StoredFile Write(StoreTransaction transaction, string path, int rows, Action<Stream> write)
    {
        using (FileStream stream = transaction.Create(path))
        {
            write(stream);
        }

        StoredFile stored = transaction.Seal(path, out long readBack);
        if (readBack != rows)
        {
            throw new StoreUnavailableException($"{path} was written with {rows} rows and reads back {readBack}.");
        }

        return stored;
    }
}
