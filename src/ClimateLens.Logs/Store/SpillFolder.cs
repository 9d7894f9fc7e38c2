using System.Globalization;

namespace ClimateLens.Logs.Store;

/// <summary>A folder for rows that do not fit into memory while an import runs; made when first needed, removed at the end.</summary>
/// <param name="disk">The disk.</param>
/// <param name="folder">The folder.</param>
internal sealed class SpillFolder(StoreDisk disk, string folder) : IDisposable
{
    private readonly List<string> _files = [];

    /// <summary>Starts a file of rows.</summary>
    public SpilledRows Create(string[] names)
    {
        disk.MakeFolder(folder);
        string path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{_files.Count}{StorePaths.Spilled}"));
        _files.Add(path);
        return new SpilledRows(disk, path, names);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (string path in _files)
        {
            disk.Remove(path);
        }

        if (_files.Count > 0)
        {
            disk.RemoveFolder(folder);
            _files.Clear();
        }
    }
}
