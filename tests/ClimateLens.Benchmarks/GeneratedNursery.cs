using System.Globalization;
using NodaTime;

namespace ClimateLens.Benchmarks;

/// <summary>A nursery with generated exports in a temporary folder; removed at the end.</summary>
internal sealed class GeneratedNursery : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("climatelens-bench-").FullName;

    /// <summary>Writes the nursery file.</summary>
    public GeneratedNursery()
    {
        Directory.CreateDirectory(PathOf("exports"));
        System.IO.File.WriteAllText(File, ClimateCsv.NurseryFile());
    }

    /// <summary>The nursery file.</summary>
    public string File => PathOf("nursery.toml");

    /// <summary>A path inside the folder.</summary>
    public string PathOf(string relative) => Path.Combine(_folder, relative);

    /// <summary>Generates an export; answers with its path.</summary>
    public string Export(string name, Instant from, int rows, int stepMinutes)
    {
        string path = PathOf(Path.Combine("exports", name));
        ClimateCsv.Write(path, from, rows, stepMinutes);
        return path;
    }

    /// <summary>Takes the store away.</summary>
    public void RemoveStore()
    {
        if (Directory.Exists(PathOf("store")))
        {
            Directory.Delete(PathOf("store"), recursive: true);
        }
    }

    /// <summary>Puts a copy of the store by, for <see cref="TakeStoreBack"/>.</summary>
    public void KeepStore() => Copy(PathOf("store"), PathOf("kept"));

    /// <summary>Takes the store for the copy that was put by.</summary>
    public void TakeStoreBack()
    {
        RemoveStore();
        Copy(PathOf("kept"), PathOf("store"));
    }

    /// <summary>Size of all files of the store. [bytes]</summary>
    public long StoreBytes() => Directory.GetFiles(PathOf("store"), "*", SearchOption.AllDirectories).Sum(file => new FileInfo(file).Length);

    /// <summary><c>generate-houses FOLDER HOUSES WEEKS STEPMINUTES</c>: a nursery of many houses that stays; from Monday 6 January 2025 on.</summary>
    public static int KeepHouses(string folder, string houses, string weeks, string stepMinutes)
    {
        int count = int.Parse(houses, CultureInfo.InvariantCulture), step = int.Parse(stepMinutes, CultureInfo.InvariantCulture);
        int rows = (int.Parse(weeks, CultureInfo.InvariantCulture) * 7 * 24 * 60 / step) + 1;
        Directory.CreateDirectory(Path.Combine(folder, "exports"));
        System.IO.File.WriteAllText(Path.Combine(folder, "nursery.toml"), ClimateCsv.NurseryFile(count));
        string first = Path.Combine(folder, "exports", "house-1.csv");
        ClimateCsv.Write(first, Instant.FromUtc(2025, 1, 6, 0, 0), rows, step);
        for (int house = 2; house <= count; house++)
        {
            System.IO.File.Copy(first, Path.Combine(folder, "exports", string.Create(CultureInfo.InvariantCulture, $"house-{house}.csv")), overwrite: true);
        }

        return 0;
    }

    /// <summary><c>generate FOLDER ROWS STEPMINUTES</c>: a nursery that stays, to look at by hand.</summary>
    public static int Keep(string folder, string rows, string stepMinutes)
    {
        Directory.CreateDirectory(Path.Combine(folder, "exports"));
        System.IO.File.WriteAllText(Path.Combine(folder, "nursery.toml"), ClimateCsv.NurseryFile());
        ClimateCsv.Write(Path.Combine(folder, "exports", "climate.csv"), Instant.FromUtc(2021, 1, 1, 0, 0), int.Parse(rows, CultureInfo.InvariantCulture), int.Parse(stepMinutes, CultureInfo.InvariantCulture));
        return 0;
    }

    private static void Copy(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            System.IO.File.Copy(file, target);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
