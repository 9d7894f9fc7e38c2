namespace ClimateLens.TestKit;

/// <summary>Finds files of the checkout that the tests run in.</summary>
public static class Repository
{
    /// <summary>The folder that holds ClimateLens.sln.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A path below the root, given with forward slashes.</summary>
    public static string PathOf(string relative) => Path.Combine(Root, relative.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>
    /// The folder of a test's source file, whose path the compiler gave. A deterministic build on CI writes another root
    /// into it ("/_/tests/…"), so only what follows "tests/" is believed.
    /// </summary>
    public static string FolderOf(string testFile)
    {
        string path = testFile.Replace('\\', '/');
        int tests = path.LastIndexOf("/tests/", StringComparison.Ordinal);
        return Path.GetDirectoryName(PathOf(path[(tests + 1)..]))!;
    }

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "ClimateLens.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No ClimateLens.sln above {AppContext.BaseDirectory}.");
    }
}
