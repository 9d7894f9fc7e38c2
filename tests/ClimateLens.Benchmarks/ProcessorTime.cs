using System.Diagnostics;

namespace ClimateLens.Benchmarks;

/// <summary>Processor time of the whole process over a piece of work, after a garbage collection.</summary>
internal static class ProcessorTime
{
    /// <summary>Runs the work once. [ms]</summary>
    public static double MillisecondsOf(Action work)
    {
        GC.Collect();
        using var process = Process.GetCurrentProcess();
        TimeSpan before = process.TotalProcessorTime;
        work();
        process.Refresh();
        return (process.TotalProcessorTime - before).TotalMilliseconds;
    }
}
