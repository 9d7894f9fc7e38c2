namespace ClimateLens.TestKit;

/// <summary>A new empty folder that goes away with the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    /// <summary>Makes the folder.</summary>
    public TemporaryFolder() => Path = Directory.CreateTempSubdirectory("climatelens-test-").FullName;

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>A path inside it, given with forward slashes.</summary>
    public string PathOf(string relative) => System.IO.Path.Combine(Path, relative.Replace('/', System.IO.Path.DirectorySeparatorChar));

    /// <summary>Writes a text file inside it, making folders as needed; answers with its path.</summary>
    public string Write(string relative, string text)
    {
        string path = PathOf(relative);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    /// <summary>Copies a folder with all below it to a place inside this one.</summary>
    public string CopyFolder(string from, string relative)
    {
        string to = PathOf(relative);
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string target = System.IO.Path.Combine(to, System.IO.Path.GetRelativePath(from, file));
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return to;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Directory.Exists(Path))
        {
            Directory.Delete(Path, recursive: true);
        }
    }
}
