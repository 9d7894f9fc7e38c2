using System.Diagnostics;
using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;
using k8s;
using k8s.Models;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>The files shipped for clusters: read by the official client of Kubernetes, and the shell parts run.</summary>
public sealed class ClusterFileTests : IDisposable
{
    private readonly SmallNursery _nursery = new();

    [Fact]
    public void KubernetesJob_ReadStrictly_IsAnIndexedJobThatNeverRetriesWhatCannotHelp()
    {
        // Strict: a key that the model of batch/v1 does not know is an error.
        V1Job job = KubernetesYaml.Deserialize<V1Job>(File.ReadAllText(Repository.PathOf("docs/cluster/kubernetes.yaml")), strict: true);
        Assert.Equal(("batch/v1", "Job", "Indexed"), (job.ApiVersion, job.Kind, job.Spec.CompletionMode));
        Assert.NotNull(job.Spec.BackoffLimitPerIndex);
        Assert.Equal("Never", job.Spec.Template.Spec.RestartPolicy); // podFailurePolicy asks for it
        V1PodFailurePolicyRule fail = job.Spec.PodFailurePolicy.Rules.Single(r => r.Action == "FailIndex"), count = job.Spec.PodFailurePolicy.Rules.Single(r => r.Action == "Count");
        Assert.Equal([64, 66, 70, 78], fail.OnExitCodes.Values);
        Assert.Equal([71, 73, 74, 75], count.OnExitCodes.Values);
        Assert.All(job.Spec.PodFailurePolicy.Rules.Where(r => r.OnExitCodes is not null), r => Assert.Contains(job.Spec.Template.Spec.Containers, c => c.Name == r.OnExitCodes.ContainerName));
    }

    [Fact]
    public void HouseWeeks_OfAWorkList_MakesItsLinesAndNoOther()
    {
        ProgramRun plan = ClimateLensProgram.Run("plan", _nursery.NurseryFile);
        _nursery.Write("todo.txt", plan.Output + "--house 1 --week 2020-W01\n");
        Assert.Equal(0, HouseWeeks(1, 1));
        Assert.True(File.Exists(_nursery.PathOf("site/house-1/2025-W42/index.html")));
        Assert.Equal(66, HouseWeeks(2, 5)); // there are no readings of that week: the line is told, with the program's own code
    }

    /// <summary>A volume that is not there must not look like work that is done.</summary>
    [Fact]
    public void HouseWeeks_WithoutItsWorkList_FailsAsWithoutData() => Assert.Equal(66, HouseWeeks(1, 1));

    public void Dispose() => _nursery.Dispose();

    private int HouseWeeks(int first, int count)
    {
        ProcessStartInfo start = new("bash", [Repository.PathOf("docs/cluster/house-weeks.sh"), _nursery.NurseryFile, _nursery.PathOf("todo.txt"), $"{first}", $"{count}"]);
        start.Environment["CLIMATELENS"] = $"dotnet {Path.Combine(AppContext.BaseDirectory, "climatelens.dll")}";
        using Process process = Process.Start(start)!;
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(5)));
        return process.ExitCode;
    }
}
