using System.Diagnostics;
using System.Globalization;

namespace ClimateLens.Benchmarks;

/// <summary>What one whole process took.</summary>
/// <param name="Seconds">From start to end. [s]</param>
/// <param name="ProcessorSeconds">User and system time of all its threads, as last seen before its end. [s]</param>
/// <param name="Mebibytes">Largest working set. [MiB]</param>
internal readonly record struct ProcessCost(double Seconds, double ProcessorSeconds, double Mebibytes);

/// <summary>Starts processes and measures them from outside, both sides of a comparison alike.</summary>
internal static class MeasuredProcess
{
    /// <summary>Runs the program under test as it was built beside this one.</summary>
    public static ProcessCost ClimateLens(params string[] args) => Run(Beside("climatelens.dll"), args);

    /// <summary>Runs this benchmark program again, for the other side of a comparison.</summary>
    public static ProcessCost Benchmark(params string[] args) => Run(Beside("ClimateLens.Benchmarks.dll"), args);

    /// <summary>One line: median, least and most of each measure.</summary>
    public static string Describe(string name, IReadOnlyCollection<ProcessCost> runs)
    {
        double[] seconds = [.. runs.Select(r => r.Seconds).Order()];
        double[] processor = [.. runs.Select(r => r.ProcessorSeconds).Order()];
        return string.Create(CultureInfo.InvariantCulture,
            $"{name}: median {Median(seconds):0.00} s (least {seconds[0]:0.00}, most {seconds[^1]:0.00}), processor {Median(processor):0.00} s (least {processor[0]:0.00}, most {processor[^1]:0.00}), peak memory {runs.Max(r => r.Mebibytes):0} MiB");
    }

    /// <summary>The middle of sorted values.</summary>
    public static double Median(double[] sorted) => sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;

    /// <summary>How many times the one costs what the other costs, by the medians of both: on a busy machine the processor time tells more than the time by the clock.</summary>
    public static string Ratio(IReadOnlyCollection<ProcessCost> one, IReadOnlyCollection<ProcessCost> other) => string.Create(CultureInfo.InvariantCulture,
        $"{Ratio(one, other, r => r.Seconds):0.00} times the time, {Ratio(one, other, r => r.ProcessorSeconds):0.00} times the processor time, {one.Max(r => r.Mebibytes) / other.Max(r => r.Mebibytes):0.00} times the peak memory");

    private static double Ratio(IEnumerable<ProcessCost> one, IEnumerable<ProcessCost> other, Func<ProcessCost, double> of)
        => Median([.. one.Select(of).Order()]) / Median([.. other.Select(of).Order()]);

    /// <summary>Runs a program.</summary>
    /// <param name="program">Its assembly.</param>
    /// <param name="args">Its arguments.</param>
    public static ProcessCost Run(string program, string[] args) => RunNative("dotnet", [program, .. args]);

    /// <summary>Runs a program that needs no <c>dotnet</c> before it.</summary>
    /// <param name="program">The file to start.</param>
    /// <param name="args">Its arguments.</param>
    public static ProcessCost RunNative(string program, string[] args)
    {
        ProcessStartInfo start = new(program, args);
        var watch = Stopwatch.StartNew();
        using Process process = Process.Start(start)!;
        long peak = 0;
        TimeSpan processor = TimeSpan.Zero;
        while (!process.WaitForExit(5))
        {
            process.Refresh();
            if (!process.HasExited)
            {
                (peak, processor) = Look(process, peak, processor);
            }
        }

        return process.ExitCode is 0 or 1
            ? new ProcessCost(watch.Elapsed.TotalSeconds, processor.TotalSeconds, peak / 1048576.0)
            : throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }

    private static string Beside(string program) => Path.Combine(AppContext.BaseDirectory, program);

    private static (long Peak, TimeSpan Processor) Look(Process process, long peak, TimeSpan processor)
    {
        try
        {
            return (Math.Max(peak, process.PeakWorkingSet64), process.TotalProcessorTime);
        }
        catch (InvalidOperationException)
        {
            return (peak, processor); // it ended between the two looks
        }
    }
}
