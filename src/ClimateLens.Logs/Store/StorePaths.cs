using System.Globalization;
using System.Text;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Store;

/// <summary>Where things lie in a store; relative paths with '/', as the ledger keeps them.</summary>
internal static class StorePaths
{
    /// <summary>The ledger.</summary>
    public const string Ledger = "ledger.json";

    /// <summary>The lock.</summary>
    public const string Lock = ".lock";

    /// <summary>Ending of a file that is written and not yet in force.</summary>
    public const string Staged = ".new";

    /// <summary>Folder for rows that do not fit into memory while an import runs.</summary>
    public const string SpillFolder = "spill";

    /// <summary>Ending of a file of such rows.</summary>
    public const string Spilled = ".rows" + Staged;

    /// <summary>Folder for damaged parts whose exports are gone.</summary>
    public const string DamagedFolder = "damaged";

    /// <summary>Stands for a hash that is not known yet.</summary>
    public const string HashToCome = "unhashed";

    /// <summary>Folder of the import sheets.</summary>
    public const string Sheets = "imports";

    /// <summary>Folder of the readings.</summary>
    public const string ReadingsFolder = "readings";

    private const int LongestFileName = 80;

    // The store may be given a folder that holds other things: only what has the shape of our own names is ours to touch.
    private static readonly (string Folder, string Pattern)[] OwnStaged =
    [
        (ReadingsFolder, "part.parquet" + Staged), ("records", "part.parquet" + Staged), ("set-aside", "*.csv" + Staged), (Sheets, "*.json" + Staged),
    ];

    /// <summary>Files that a run which was cut off left staged.</summary>
    public static IEnumerable<string> StagedFiles(string store)
        => OwnStaged.Select(own => (Folder: Path.Combine(store, own.Folder), own.Pattern))
            .Where(own => Directory.Exists(own.Folder))
            .SelectMany(own => Directory.GetFiles(own.Folder, own.Pattern, SearchOption.AllDirectories))
            .Where(path => IsOwn(Path.GetRelativePath(store, path)))
            .Concat(SpilledFiles(Path.Combine(store, SpillFolder)))
            .Concat(new[] { Path.Combine(store, Ledger + Staged) }.Where(File.Exists));

    private static string[] SpilledFiles(string folder) => Directory.Exists(folder) ? Directory.GetFiles(folder, "*" + Spilled) : [];

    /// <summary>A year of readings.</summary>
    public static string Readings(string house, string source, int year)
        => string.Create(CultureInfo.InvariantCulture, $"{ReadingsFolder}/house={house}/source={source}/year={year}/part.parquet");

    /// <summary>The records of one house and source.</summary>
    public static string Records(string house, RecordKind kind, string source)
        => $"records/house={house}/kind={RecordKinds.WordOf(kind)}/source={source}/part.parquet";

    /// <summary>What was set aside of one file.</summary>
    public static string SetAside(SourceKey key, string file, string sha256)
    {
        string kind = key.Kind is RecordKind k ? $"/kind={RecordKinds.WordOf(k)}" : "";
        return $"set-aside/house={key.House}{kind}/source={key.Source}/{Safe(Path.GetFileName(file))}.{sha256[..8]}.csv";
    }

    /// <summary>The sheet of one file. The hash tells files of one name in different folders apart, and exports that read one file.</summary>
    public static string Sheet(SourceKey key, string file, string sha256)
    {
        string kind = key.Kind is RecordKind k ? RecordKinds.WordOf(k) : "";
        string hash = ContentHash.Of(Encoding.UTF8.GetBytes($"{key.House}\n{kind}\n{key.Source}\n{file}\n{sha256}"));
        return $"{Sheets}/{Safe(Path.GetFileName(file))}.{hash[..8]}.json";
    }

    private static bool IsOwn(string relative)
        => relative.Contains("source=", StringComparison.Ordinal) || Path.GetDirectoryName(relative) == Sheets;

    private static string Safe(string name)
    {
        var safe = new StringBuilder();
        foreach (char c in name.AsSpan(0, Math.Min(name.Length, LongestFileName)))
        {
            safe.Append(char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '_');
        }

        return safe.ToString();
    }
}
