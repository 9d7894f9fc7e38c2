namespace ClimateLens.Logs.Store;

/// <summary>
/// The lock of a store: a file opened for one process alone. The system frees it when the process ends, however it
/// ends, so a lock file that lies about locks nothing.
/// </summary>
internal sealed class StoreLock : IDisposable
{
    private readonly FileStream _file;

    private StoreLock(FileStream file) => _file = file;

    /// <summary>Takes the lock; creates the folder.</summary>
    public static StoreLock Take(string folder) => Held(folder, FileAccess.ReadWrite, FileShare.None);

    /// <summary>Takes it beside others who read, and keeps out who would change the store.</summary>
    public static StoreLock Share(string folder) => Held(folder, FileAccess.Read, FileShare.Read);

    private static StoreLock Held(string folder, FileAccess access, FileShare share)
    {
        string path = Path.Combine(folder, StorePaths.Lock);
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreUnavailableException($"The store folder {folder} cannot be made: {e.Message}", e);
        }

        try
        {
            return new StoreLock(new FileStream(path, FileMode.OpenOrCreate, access, share));
        }
        catch (UnauthorizedAccessException e)
        {
            throw new StoreUnavailableException($"The store folder {folder} cannot be written: {e.Message}", e);
        }
        catch (IOException e) when (e is DirectoryNotFoundException or FileNotFoundException or PathTooLongException || !File.Exists(path) || !Writable(folder))
        {
            throw new StoreUnavailableException($"The store folder {folder} cannot be written: {e.Message}", e);
        }
        catch (IOException e)
        {
            throw new StoreLockedException($"Another run holds the store {folder}; try again when it is done.", e);
        }
    }

    /// <summary>Tells a store on a read-only disk from one that another run holds: both refuse the lock file alike.</summary>
    private static bool Writable(string folder)
    {
        string probe = Path.Combine(folder, StorePaths.Lock + ".probe");
        try
        {
            using FileStream made = new(probe, FileMode.Create, FileAccess.Write, FileShare.ReadWrite, 1, FileOptions.DeleteOnClose);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();
}
