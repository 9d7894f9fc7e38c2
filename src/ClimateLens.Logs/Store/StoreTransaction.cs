namespace ClimateLens.Logs.Store;

/// <summary>
/// Changes several files of the store as one. Each is written beside its place (<c>.new</c>) and flushed; writing the
/// ledger, which names their hashes, puts all in force at once; then each is renamed into its place. A run that is
/// killed in between leaves files that the next one renames (the ledger names them) or removes (it does not).
/// </summary>
/// <param name="folder">The store.</param>
/// <param name="disk">The disk.</param>
internal sealed class StoreTransaction(string folder, StoreDisk disk) : IDisposable
{
    private readonly Dictionary<string, (long Size, string Sha256)?> _staged = new(StringComparer.Ordinal);
    private bool _committed;

    /// <summary>For rows that do not fit into memory.</summary>
    public SpillFolder Spill { get; } = new(disk, Path.Combine(folder, StorePaths.SpillFolder));

    /// <summary>Size of all that is written and closed. [bytes]</summary>
    public long StagedBytes => _staged.Values.Sum(f => f?.Size ?? 0);

    /// <summary>Finishes or undoes what an earlier run left behind.</summary>
    public static void Recover(string folder, Ledger? ledger, StoreDisk disk)
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
                disk.Move(staged, place);
            }
            else
            {
                disk.Remove(staged);
            }
        }

        disk.RemoveFolder(Path.Combine(folder, StorePaths.SpillFolder));
        Remove(folder, ledger?.Obsolete ?? [], disk);
    }

    /// <summary>Opens the staged form of a file for writing; close it before it is sealed.</summary>
    public Stream Create(string relativePath)
    {
        string staged = StagedOf(relativePath);
        disk.MakeFolder(Path.GetDirectoryName(staged)!);
        _staged[relativePath] = null;
        return new HashedWriteStream(disk.Create(staged), (size, hash) => _staged[relativePath] = (size, hash));
    }

    /// <summary>Where the staged form of a file lies.</summary>
    public string StagedOf(string relativePath) => Path.Combine(folder, relativePath) + StorePaths.Staged;

    /// <summary>Drops a staged file.</summary>
    public void Discard(string relativePath)
    {
        if (_staged.Remove(relativePath))
        {
            disk.Remove(StagedOf(relativePath));
        }
    }

    /// <summary>Gives a staged file, closed before, another place.</summary>
    public void Rename(string relativePath, string newPath)
    {
        disk.Move(StagedOf(relativePath), StagedOf(newPath));
        _staged.Remove(relativePath, out (long Size, string Sha256)? written);
        _staged[newPath] = written;
    }

    /// <summary>
    /// Keeps what is left of a damaged part, under a name of its content; where it is now, relative to the store, or null when nothing
    /// is left. This holds at once, whatever becomes of the rest: it takes nothing away.
    /// </summary>
    public string? KeepDamaged(string relativePath)
    {
        string place = Path.Combine(folder, relativePath);
        if (ContentHash.OfFile(place) is not string hash || new FileInfo(place).Length == 0)
        {
            return null;
        }

        string kept = $"{StorePaths.DamagedFolder}/{relativePath}.{hash[..8]}";
        string target = Path.Combine(folder, kept);
        if (ContentHash.OfFile(target) != hash)
        {
            disk.MakeFolder(Path.GetDirectoryName(target)!);
            using (Stream copy = disk.Create(target))
            {
                using FileStream damaged = new(place, FileMode.Open, FileAccess.Read, FileShare.Read);
                damaged.CopyTo(copy);
            }

            disk.Persist(target);
        }

        return kept;
    }

    /// <summary>Makes a staged file durable and reads its bytes back.</summary>
    /// <exception cref="StoreUnavailableException">What was written does not read back.</exception>
    public StoredFile Seal(string relativePath)
    {
        string staged = StagedOf(relativePath);
        disk.Persist(staged);
        (long size, string hash) = _staged[relativePath] ?? throw new InvalidOperationException($"{relativePath} is still open.");
        return ContentHash.OfFile(staged) == hash
            ? new StoredFile(relativePath, size, hash)
            : throw new StoreUnavailableException($"{staged} does not read back as it was written; the disk may be failing.");
    }

    /// <summary>Makes a staged Parquet part durable, reads its bytes back, and its number of rows out of them.</summary>
    /// <exception cref="StoreUnavailableException">What was written does not read back.</exception>
    public StoredFile SealPart(string relativePath, long rows)
    {
        StoredFile stored = Seal(relativePath);
        using FileStream stream = new(StagedOf(relativePath), FileMode.Open, FileAccess.Read, FileShare.Read);
        using var footer = PartFooter.Open(stream);
        return footer.Rows == rows ? stored : throw new StoreUnavailableException($"{relativePath} was written with {rows} rows and reads back {footer.Rows}.");
    }

    /// <summary>Puts all in force.</summary>
    public void Commit(Ledger ledger)
    {
        Spill.Dispose();
        string place = Path.Combine(folder, StorePaths.Ledger);
        string staged = place + StorePaths.Staged;
        using (Stream stream = disk.Create(staged))
        {
            stream.Write(LedgerFormat.Write(ledger));
        }

        disk.Persist(staged);
        disk.Move(staged, place);
        _committed = true;
        foreach (string path in _staged.Keys)
        {
            disk.Move(StagedOf(path), Path.Combine(folder, path));
        }

        Remove(folder, ledger.Obsolete, disk);
    }

    /// <summary>Removes files that are no longer in force; a user may have removed them before, with their folder.</summary>
    private static void Remove(string folder, IEnumerable<string> obsolete, StoreDisk disk)
    {
        foreach (string path in obsolete)
        {
            disk.Remove(Path.Combine(folder, path));
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Spill.Dispose();
        if (!_committed)
        {
            foreach (string path in _staged.Keys)
            {
                disk.Remove(StagedOf(path));
            }
        }
    }
}
