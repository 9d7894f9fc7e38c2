using System.Diagnostics;
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
        List<(double Seconds, double Mebibytes)> first = [], second = [];
        for (int i = 0; i < repeats; i++)
        {
            string nursery = SampleNursery();
            first.Add(Time("run", nursery, "--quiet"));
            second.Add(Time("run", nursery, "--quiet"));
            Directory.Delete(Path.GetDirectoryName(Path.GetDirectoryName(nursery))!, recursive: true);
        }

        Print("first run", first);
        Print("second run", second);
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

    private static (double Seconds, double Mebibytes) Time(params string[] args)
    {
        ProcessStartInfo start = new("dotnet");
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "climatelens.dll"));
        foreach (string arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        Stopwatch watch = Stopwatch.StartNew();
        using Process process = Process.Start(start)!;
        long peak = 0;
        while (!process.WaitForExit(5))
        {
            process.Refresh();
            peak = process.HasExited ? peak : Math.Max(peak, process.PeakWorkingSet64);
        }

        return process.ExitCode is 0 or 1
            ? (watch.Elapsed.TotalSeconds, peak / 1048576.0)
            : throw new InvalidOperationException($"climatelens ended with {process.ExitCode}.");
    }

    private static void Print(string name, List<(double Seconds, double Mebibytes)> runs)
    {
        double[] seconds = [.. runs.Select(r => r.Seconds).Order()];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name}: median {seconds[seconds.Length / 2]:0.00} s (least {seconds[0]:0.00}, most {seconds[^1]:0.00}), peak memory {runs.Max(r => r.Mebibytes):0} MiB"));
    }
}
