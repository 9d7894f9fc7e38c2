using System.ComponentModel;
using System.Diagnostics;

namespace ClimateLens.EndToEnd.Tests.Program;

/// <summary>Runs of the program that are killed (SIGKILL on Unix) at a moment of their processor time, which unlike the time of day hardly depends on what else the machine does.</summary>
internal static class KilledProgram
{
    /// <summary>Processor time of an undisturbed run.</summary>
    public static TimeSpan Processor(params string[] args)
    {
        using Process process = Start(args);
        TimeSpan used = WaitFor(process, TimeSpan.MaxValue);
        Assert.Contains(process.ExitCode, (int[])[0, 1]);
        return used;
    }

    /// <summary>Kills a run when it has used so much processor time; whether it was still going then.</summary>
    public static bool KillAfter(TimeSpan moment, params string[] args)
    {
        using Process process = Start(args);
        WaitFor(process, moment);
        process.Kill();
        process.WaitForExit();
        return process.ExitCode is not (0 or 1);
    }

    /// <summary>Kills a run some time after something is to be seen; whether it was still going then.</summary>
    /// <param name="isSeen">Looks for it.</param>
    /// <param name="later">How long after.</param>
    /// <param name="args">Arguments of the run.</param>
    public static bool KillAfter(Func<bool> isSeen, TimeSpan later, params string[] args)
    {
        using Process process = Start(args);
        while (!isSeen() && !process.WaitForExit(1))
        {
        }

        Thread.Sleep(later);
        process.Kill();
        process.WaitForExit();
        return process.ExitCode is not (0 or 1);
    }

    /// <summary>Waits until a run has used so much processor time or has ended; what it used when last seen alive.</summary>
    private static TimeSpan WaitFor(Process process, TimeSpan moment)
    {
        TimeSpan used = TimeSpan.Zero;
        while (used < moment && !process.WaitForExit(2))
        {
            try
            {
                process.Refresh();
                used = process.TotalProcessorTime;
            }
            catch (Exception gone) when (gone is InvalidOperationException or Win32Exception)
            {
                // it ended in between
            }
        }

        return used;
    }

    private static Process Start(string[] args)
    {
        Process process = ClimateLensProgram.Start(null, args);
        _ = process.StandardOutput.ReadToEndAsync();
        _ = process.StandardError.ReadToEndAsync();
        return process;
    }
}
