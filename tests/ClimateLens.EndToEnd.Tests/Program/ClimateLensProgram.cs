using System.Diagnostics;
using System.Text.Json;

namespace ClimateLens.EndToEnd.Tests.Program;

/// <summary>Starts the program as a user does, and keeps what it said.</summary>
internal static class ClimateLensProgram
{
    /// <summary>Another program to be tried in place of the one that was built with the tests; null for none.</summary>
    private static readonly string? Other = Environment.GetEnvironmentVariable("CLIMATELENS_TEST_PROGRAM");

    /// <summary>Runs one command line to its end; at most five minutes: a machine may do much else besides.</summary>
    public static ProgramRun Run(params string[] args) => RunIn(null, args);

    /// <summary>Runs one command line in a working folder.</summary>
    public static ProgramRun RunIn(string? workingFolder, params string[] args) => End(Start(workingFolder, args), args);

    /// <summary>Runs one command line with environment variables.</summary>
    public static ProgramRun RunWith(IReadOnlyDictionary<string, string> variables, params string[] args) => End(Start(null, args, variables), args);

    /// <summary>Runs one command line with a stream closed, by the shell: 1 the output, 2 the error.</summary>
    public static ProgramRun RunClosed(string stream, params string[] args)
    {
        ProcessStartInfo start = new("sh") { RedirectStandardOutput = true, RedirectStandardError = true };
        string[] program = Other is null ? ["dotnet", Path.Combine(AppContext.BaseDirectory, "climatelens.dll")] : [Other];
        foreach (string arg in (string[])["-c", $"exec \"$@\" {stream}>&-", "sh", .. program, .. args])
        {
            start.ArgumentList.Add(arg);
        }

        return End(Process.Start(start) ?? throw new InvalidOperationException("sh did not start."), args);
    }

    private static ProgramRun End(Process started, string[] args)
    {
        using Process process = started;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(TimeSpan.FromMinutes(5)))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"climatelens {string.Join(' ', args)} did not end within five minutes.");
        }

        process.WaitForExit();
        return new ProgramRun(process.ExitCode, output.Result, error.Result);
    }

    /// <summary>Starts the program and leaves it running.</summary>
    public static Process Start(string? workingFolder, params string[] args) => Start(workingFolder, args, null);

    /// <summary>Starts the program with environment variables and leaves it running; nobody reads what it says.</summary>
    public static Process StartWith(IReadOnlyDictionary<string, string> variables, params string[] args) => Start(null, args, variables);

    private static Process Start(string? workingFolder, string[] args, IReadOnlyDictionary<string, string>? variables)
    {
        ProcessStartInfo start = new(Other ?? "dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = workingFolder ?? Path.GetTempPath(),
        };
        if (Other is null)
        {
            start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "climatelens.dll"));
        }

        foreach (string arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        foreach ((string name, string value) in variables ?? new Dictionary<string, string>())
        {
            start.Environment[name] = value;
        }

        return Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
    }
}

/// <summary>What a run left behind.</summary>
internal sealed record ProgramRun(int ExitCode, string Output, string Error)
{
    /// <summary>The output of a run with --json.</summary>
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    /// <summary>All of it, for messages of failed tests.</summary>
    public override string ToString() => $"exit code {ExitCode}\n--- stdout\n{Output}\n--- stderr\n{Error}";
}
