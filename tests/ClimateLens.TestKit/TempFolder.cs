namespace ClimateLens.TestKit;

/// <summary>A folder for one test, gone with it.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("climatelens-").FullName;

    public string Of(string place) => System.IO.Path.Combine(Path, place.Replace('/', System.IO.Path.DirectorySeparatorChar));

    public void Dispose()
    {
        if (Directory.Exists(Path))
        {
            Directory.Delete(Path, recursive: true);
        }
    }
}
