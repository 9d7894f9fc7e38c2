namespace ClimateLens.Logs.Store;

/// <summary>Everything that changes the store's folder goes through here, so that a test can let the disk fail at any step.</summary>
internal class StoreDisk
{
    /// <summary>The disk itself.</summary>
    public static StoreDisk Real { get; } = new();

    /// <summary>Opens a new file for writing; an old one of that name is cut to nothing.</summary>
    public virtual Stream Create(string path) => new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.Read, bufferSize: 0);

    /// <summary>Makes what was written to a file durable.</summary>
    public virtual void Persist(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read, bufferSize: 0);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>Renames a file over another one.</summary>
    public virtual void Move(string from, string to) => File.Move(from, to, overwrite: true);

    /// <summary>Removes a file if it is there; the folder it lay in may be gone as well.</summary>
    public virtual void Remove(string path)
    {
        if (File.Exists(path))
        {
            File.Delete(path);
        }
    }

    /// <summary>Makes a folder and those above it.</summary>
    public virtual void MakeFolder(string path) => Directory.CreateDirectory(path);

    /// <summary>Removes a folder if it is there and empty.</summary>
    public virtual void RemoveFolder(string path)
    {
        if (Directory.Exists(path) && !Directory.EnumerateFileSystemEntries(path).Any())
        {
            Directory.Delete(path);
        }
    }
}
