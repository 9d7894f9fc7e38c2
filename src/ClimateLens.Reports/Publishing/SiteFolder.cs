namespace ClimateLens.Reports.Publishing;

/// <summary>
/// File work inside the site's folder. A file is written beside its place and renamed into it, so that a reader sees the
/// old one or the new one, never a part. Every failure is one <see cref="SiteUnavailableException"/>.
/// </summary>
internal sealed class SiteFolder : IDisposable
{
    private const string StagingName = ".staging";
    private static readonly ParallelOptions Flushes = new() { MaxDegreeOfParallelism = SitePublisher.FilesAtOnce };
    private readonly Lock _stagingLock = new();
    private readonly string _root;
    private readonly SiteDisk _disk;
    private readonly FileStream? _held;

    /// <summary>Makes the folder where it lacks, shows that it can be written, and clears what a killed run left.</summary>
    public SiteFolder(string root, SiteDisk? disk = null)
    {
        _disk = disk ?? SiteDisk.Real;
        _root = Path.GetFullPath(root);
        Staging = Path.Combine(_root, StagingName);
        Guarded(_root, () =>
        {
            if (Directory.Exists(Staging))
            {
                Directory.Delete(Staging, recursive: true);
            }

            _disk.MakeFolder(Staging);
            _disk.Write(Path.Combine(Staging, "writable"), []);
            Directory.Delete(Staging, recursive: true);
        });
    }

    /// <summary>Opens the folder for one page, beside others that do the same: what they stage is left alone, and no two may make the same page at once.</summary>
    /// <exception cref="PageHeldException">Another process makes this page.</exception>
    public static SiteFolder ForOnePage(string root, string folder) => new(root, folder.Replace('/', '~'));

    private SiteFolder(string root, string job)
    {
        _disk = SiteDisk.Real;
        _root = Path.GetFullPath(root);
        Staging = Path.Combine(_root, StagingName, job);
        Guarded(_root, () => Directory.CreateDirectory(Path.Combine(_root, StagingName)));
        _held = Guarded(_root, () => Hold(Staging + ".lock", job));
    }

    private string Staging { get; }

    // The lock's file stays until someone has the site alone: taken away earlier, two could each hold one of that name.
    private static FileStream Hold(string path, string job)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e) when (File.Exists(path) && e is not (DirectoryNotFoundException or FileNotFoundException or PathTooLongException))
        {
            throw new PageHeldException($"Another run makes the page {job.Replace('~', '/')}; try again when it is done.", e);
        }
    }

    /// <summary>Folders of pages: <c>house-1/2025-W42</c>, in ordinal order.</summary>
    public IReadOnlyList<string> PageFolders() => Guarded(_root, () => (IReadOnlyList<string>)
    [
        .. Directory.GetDirectories(_root, "house-*").SelectMany(Directory.GetDirectories)
            .Select(path => Path.GetRelativePath(_root, path).Replace(Path.DirectorySeparatorChar, '/')).Order(StringComparer.Ordinal),
    ]);

    /// <summary>Gives the page free.</summary>
    public void Dispose() => _held?.Dispose();

    /// <summary>Full path of a place in the site, given with '/'.</summary>
    public string PathOf(string place) => Path.Combine(_root, place.Replace('/', Path.DirectorySeparatorChar));

    public bool Exists(string place) => File.Exists(PathOf(place));

    /// <summary>Names of the files in a folder of the site that end so, in ordinal order.</summary>
    public IReadOnlyList<string> Names(string folder, string ending) => Guarded(folder, () => Directory.Exists(PathOf(folder))
        ? [.. Directory.GetFiles(PathOf(folder), "*" + ending).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)]
        : (IReadOnlyList<string>)[]);

    /// <summary>The file's bytes, or null where there is none.</summary>
    public byte[]? Read(string place) => Guarded(place, () => Exists(place) ? File.ReadAllBytes(PathOf(place)) : null);

    /// <summary>The first bytes of a file, or nothing where there is none.</summary>
    public byte[] ReadStart(string place, int bytes) => Guarded(place, () =>
    {
        if (!Exists(place))
        {
            return [];
        }

        using FileStream file = File.OpenRead(PathOf(place));
        byte[] start = new byte[Math.Min(bytes, file.Length)];
        file.ReadExactly(start);
        return start;
    });

    /// <summary>Writes one file in one step.</summary>
    public void Write(string place, ReadOnlyMemory<byte> content) => WriteAll([(place, content)]);

    /// <summary>
    /// Writes all files beside their places first, flushed to the disk, then renames them in the given order and flushes their folders: a full
    /// disk or a locked folder shows before anything has changed.
    /// </summary>
    public void WriteAll(IReadOnlyList<(string Place, ReadOnlyMemory<byte> Content)> files) => Guarded(files[0].Place, () =>
    {
        string stage = Path.Combine(Staging, files[0].Place.Replace('/', '~'));
        lock (_stagingLock)
        {
            _disk.MakeFolder(stage);
        }

        try
        {
            // Side by side: waiting for the disk is most of it, and it takes many flushes in the time of one.
            Parallel.ForEach(files, Flushes, file => _disk.Write(Path.Combine(stage, Path.GetFileName(PathOf(file.Place))), file.Content.Span));
        }
        catch (AggregateException several)
        {
            throw several.InnerExceptions[0];
        }

        foreach ((string place, _) in files)
        {
            string target = PathOf(place);
            _disk.MakeFolder(Path.GetDirectoryName(target)!);
            _disk.Move(Path.Combine(stage, Path.GetFileName(target)), target);
        }

        foreach (string folder in files.Select(f => Path.GetDirectoryName(PathOf(f.Place))!).Distinct(StringComparer.Ordinal))
        {
            _disk.PersistFolder(folder);
        }

        RemoveStage(stage);
    });

    /// <summary>Deletes a file if it is there.</summary>
    public void Delete(string place) => Guarded(place, () =>
    {
        _disk.Remove(PathOf(place));
    });

    private void RemoveStage(string stage)
    {
        lock (_stagingLock)
        {
            Directory.Delete(stage);
            if (!Directory.EnumerateFileSystemEntries(Staging).Any())
            {
                Directory.Delete(Staging);
            }
        }
    }

    private void Guarded(string place, Action work) => Guarded(place, () =>
    {
        work();
        return true;
    });

    private T Guarded<T>(string place, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new SiteUnavailableException($"The site folder {_root} cannot be used ({place}): {cause.Message}", cause);
        }
    }
}
