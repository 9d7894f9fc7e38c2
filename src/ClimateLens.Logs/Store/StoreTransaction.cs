namespace ClimateLens.Logs.Store;

/// <summary>
/// Changes several files of the store as one. Each is written beside its place (<c>.new</c>) and flushed; writing the
/// ledger, which names their hashes, puts all in force at once; then each is renamed into its place. A run that is
/// killed in between leaves files that the next one renames (the ledger names them) or removes (it does not).
/// </summary>
/// <param name="folder">The store.</param>
internal sealed class StoreTransaction(string folder) : IDisposable
{
    private readonly List<string> _staged = [];
    private bool _committed;

    /// <summary>Finishes or undoes what an earlier run left behind.</summary>
    public static void Recover(string folder, Ledger? ledger)
    {
        Dictionary<string, string> inForce = (ledger?.Sources ?? [])
            .SelectMany(s => s.Parts.Select(p => p.Stored).Concat(s.Files.SelectMany(f => new[] { f.SetAsideFile, f.Sheet }).OfType<StoredFile>()))
            .GroupBy(f => f.Path).ToDictionary(g => g.Key, g => g.Last().Sha256);
        foreach (string staged in StorePaths.StagedFiles(folder))
        {
            string place = staged[..^StorePaths.Staged.Length];
            string relative = Path.GetRelativePath(folder, place).Replace('\\', '/');
            if (inForce.TryGetValue(relative, out string? hash) && ContentHash.OfFile(staged) == hash)
            {
                File.Move(staged, place, overwrite: true);
            }
            else
            {
                File.Delete(staged);
            }
        }

        Remove(folder, ledger?.Obsolete ?? []);
    }

    /// <summary>Opens the staged form of a file for writing; close it before it is sealed.</summary>
    public FileStream Create(string relativePath)
    {
        string staged = Path.Combine(folder, relativePath) + StorePaths.Staged;
        Directory.CreateDirectory(Path.GetDirectoryName(staged)!);
        if (!_staged.Contains(relativePath))
        {
            _staged.Add(relativePath);
        }

        return new FileStream(staged, FileMode.Create, FileAccess.ReadWrite, FileShare.None);
    }

    /// <summary>Drops a staged file.</summary>
    public void Discard(string relativePath)
    {
        if (_staged.Remove(relativePath))
        {
            File.Delete(Path.Combine(folder, relativePath) + StorePaths.Staged);
        }
    }

    /// <summary>Makes a staged file durable and takes its hash.</summary>
    public StoredFile Seal(string relativePath)
    {
        using FileStream stream = Reopen(relativePath);
        return Sealed(relativePath, stream);
    }

    /// <summary>Makes a staged Parquet file durable, takes its hash and reads back its number of rows.</summary>
    public StoredFile Seal(string relativePath, out long rows)
    {
        using FileStream stream = Reopen(relativePath);
        StoredFile stored = Sealed(relativePath, stream);
        stream.Position = 0;
        rows = ReadingPart.CountRows(stream);
        return stored;
    }

    /// <summary>Puts all in force.</summary>
    public void Commit(Ledger ledger)
    {
        string place = Path.Combine(folder, StorePaths.Ledger);
        string staged = place + StorePaths.Staged;
        using (var stream = new FileStream(staged, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            stream.Write(LedgerFormat.Write(ledger));
            stream.Flush(flushToDisk: true);
        }

        File.Move(staged, place, overwrite: true);
        _committed = true;
        foreach (string path in _staged)
        {
            File.Move(Path.Combine(folder, path) + StorePaths.Staged, Path.Combine(folder, path), overwrite: true);
        }

        Remove(folder, ledger.Obsolete);
    }

    /// <summary>Removes files that are no longer in force; a user may have removed them before, with their folder.</summary>
    private static void Remove(string folder, IEnumerable<string> obsolete)
    {
        foreach (string path in obsolete.Select(relative => Path.Combine(folder, relative)).Where(File.Exists))
        {
            File.Delete(path);
        }
    }

    private FileStream Reopen(string relativePath)
        => new(Path.Combine(folder, relativePath) + StorePaths.Staged, FileMode.Open, FileAccess.ReadWrite, FileShare.None);

    private static StoredFile Sealed(string relativePath, FileStream stream)
    {
        stream.Flush(flushToDisk: true);
        return new StoredFile(relativePath, stream.Length, ContentHash.Of(stream));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_committed)
        {
            foreach (string path in _staged)
            {
                File.Delete(Path.Combine(folder, path) + StorePaths.Staged);
            }
        }
    }
}
