using System.Security.Cryptography;
using System.Text;

namespace ClimateLens.HouseSimulator.Output;

/// <summary>Files to be written, by path with forward slashes; text is UTF-8 without a byte order mark, lines end in LF.</summary>
public sealed class FileSet
{
    private readonly SortedDictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    public IReadOnlyDictionary<string, byte[]> Files => _files;

    public void Add(string path, string text)
        => _files.Add(path, new UTF8Encoding(false).GetBytes(text.ReplaceLineEndings("\n")));

    /// <summary>The same bytes once more under another name.</summary>
    public void Copy(string path, string again) => _files.Add(again, _files[path]);

    /// <summary>SHA-256 of a file, lower-case hex.</summary>
    public string Sha256(string path) => Convert.ToHexStringLower(SHA256.HashData(_files[path]));

    /// <summary>Writes all files beneath a folder; other files there are left alone.</summary>
    public void Write(string folder)
    {
        foreach ((string path, byte[] bytes) in _files)
        {
            string target = Path.Combine(folder, path.Replace('/', Path.DirectorySeparatorChar));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllBytes(target, bytes);
        }
    }
}
