using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs;

/// <summary>Reads a nursery file from disk.</summary>
public static class NurseryFileReader
{
    /// <summary>Reads and checks a nursery file, with the paths of its exports that are no patterns.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="FileNotFoundException">There is no such file, or it is a folder.</exception>
    /// <exception cref="NurseryFileException">It has faults; all of them are listed.</exception>
    public static NurserySettings Read(string path)
    {
        byte[] bytes = Bytes(path);
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return NurseryFile.Parse(path, bytes, file => Path.Exists(Path.Combine(folder, file)));
    }

    /// <summary>The ids of a nursery file's houses and the name of its zone, whatever else is wrong in it, such as exports that are still missing.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="FileNotFoundException">There is no such file, or it is a folder.</exception>
    public static (string[] HouseIds, string? Zone) Outline(string path) => NurseryFile.Outline(Bytes(path));

    private static byte[] Bytes(string path)
    {
        if (!File.Exists(path))
        {
            throw new FileNotFoundException(
                Directory.Exists(path) ? $"{path} is a folder; name the nursery file in it." : $"There is no nursery file {path}.", path);
        }

        return File.ReadAllBytes(path);
    }
}
