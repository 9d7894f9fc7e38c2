using System.Diagnostics;
using ClimateLens.TestKit;

namespace ClimateLens.Benchmarks;

/// <summary>The program as people install it: compiled ahead, by <c>dotnet publish</c>; made in a temporary folder and removed at the end.</summary>
internal sealed class PublishedProgram : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("climatelens-published-").FullName;

    /// <summary>Publishes the program of this source.</summary>
    public PublishedProgram()
    {
        ProcessStartInfo start = new("dotnet", ["publish", Repository.PathOf("src/ClimateLens.Cli"), "-c", "Release", "--use-current-runtime", "--no-self-contained", "-o", _folder, "-v", "quiet"]);
        using Process process = Process.Start(start)!;
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"dotnet publish ended with {process.ExitCode}.");
        }
    }

    /// <summary>Runs it.</summary>
    public ProcessCost Run(params string[] args) => MeasuredProcess.Run(Path.Combine(_folder, "climatelens.dll"), args);

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
