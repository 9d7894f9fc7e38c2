using System.Globalization;
using ClimateLens.TestKit;

namespace ClimateLens.Benchmarks;

/// <summary>
/// Times the whole program as a process on a fresh copy of the sample logs: a first run on nothing,
/// and a second run with nothing new. Prints the median, least and most of the repeats, and the peak memory.
/// </summary>
internal static class WholeProcess
{
    /// <summary><c>whole-process [REPEATS]</c>, five by default.</summary>
    public static int Run(string[] args)
    {
        int repeats = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 5;
        List<ProcessCost> first = [], second = [];
        for (int i = 0; i < repeats; i++)
        {
            string nursery = SampleNursery();
            first.Add(MeasuredProcess.ClimateLens("run", nursery, "--quiet"));
            second.Add(MeasuredProcess.ClimateLens("run", nursery, "--quiet"));
            Directory.Delete(Path.GetDirectoryName(Path.GetDirectoryName(nursery))!, recursive: true);
        }

        Console.WriteLine(MeasuredProcess.Describe("first run", first));
        Console.WriteLine(MeasuredProcess.Describe("second run", second));
        return 0;
    }

    /// <summary>A fresh copy of the sample logs in a temporary folder; answers with its nursery file.</summary>
    public static string SampleNursery()
    {
        string from = Repository.PathOf("sample-logs");
        string to = Path.Combine(Directory.CreateTempSubdirectory("climatelens-bench-").FullName, "sample-logs");
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(f => !f.Contains("/store/", StringComparison.Ordinal)))
        {
            string target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return Path.Combine(to, "nursery.toml");
    }
}
