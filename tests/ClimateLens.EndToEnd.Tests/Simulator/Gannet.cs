using System.Security.Cryptography;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Output;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests.Simulator;

/// <summary>One simulated nursery shared by the tests, and where the committed one lies.</summary>
internal static class Gannet
{
    private static readonly Lazy<NurseryRun> LazyRun = new(() => NurseryRun.Of(SampleNursery.DefaultSeed));
    private static readonly Lazy<FileSet> LazyFiles = new(() => SampleNursery.Make(Run));

    public static NurseryRun Run => LazyRun.Value;

    public static FileSet Files => LazyFiles.Value;

    /// <summary>Lines of a simulated file, without the empty one after the last line end.</summary>
    public static string[] Lines(string path)
        => System.Text.Encoding.UTF8.GetString(Files.Files[path]).Split('\n')[..^1];

    public static string Sha256(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static string CommittedFolder() => Repository.PathOf("sample-logs");
}
