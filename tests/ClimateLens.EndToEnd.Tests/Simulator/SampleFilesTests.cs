using System.Globalization;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Scenario;

namespace ClimateLens.EndToEnd.Tests.Simulator;

public class SampleFilesTests
{
    [Fact]
    public void Write_SecondRunInAnotherCulture_SameBytes()
    {
        string folder = Directory.CreateTempSubdirectory("gannet-row-").FullName;
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            culture.NumberFormat.NumberDecimalSeparator = ",";
            culture.NumberFormat.NegativeSign = "~";
            culture.DateTimeFormat.DateSeparator = "/";
            culture.DateTimeFormat.TimeSeparator = ".";
            CultureInfo.CurrentCulture = culture;
            SampleNursery.Write(folder);
            foreach ((string path, byte[] bytes) in Gannet.Files.Files)
            {
                Assert.True(bytes.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(folder, path))), path);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void CommittedSample_DefaultSeed_IsWhatTheSimulatorWrites()
    {
        string folder = Gannet.CommittedFolder();
        var committed = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
            .Where(path => !path.StartsWith("store/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);
        Assert.Equal(Gannet.Files.Files.Keys, committed);
        foreach ((string path, byte[] bytes) in Gannet.Files.Files)
        {
            Assert.True(Gannet.Sha256(bytes) == Gannet.Sha256(File.ReadAllBytes(Path.Combine(folder, path))), path);
        }
    }

    [Fact]
    public void Files_All_FitInFifteenMegabytesAndEndLinesInLineFeed()
    {
        Assert.InRange(Gannet.Files.Files.Values.Sum(bytes => (long)bytes.Length), 1_000_000, 15_000_000);
        Assert.All(Gannet.Files.Files, file =>
        {
            Assert.DoesNotContain((byte)'\r', file.Value);
            Assert.Equal((byte)'\n', file.Value[^1]);
        });
    }

    [Fact]
    public void NurseryFile_Scenario_SayTheSame()
    {
        string file = string.Join('\n', Gannet.Lines("nursery.toml"));
        string[] houses = file.Split("[[house]]")[1..];
        Assert.Equal(Gannet.Run.Houses.Count, houses.Length);
        foreach ((HouseRun run, string text) in Gannet.Run.Houses.Zip(houses))
        {
            Assert.Contains($"id = \"{run.Options.Id}\"", text, StringComparison.Ordinal);
            Assert.Contains(FormattableString.Invariant($"potted = {run.Options.Crop.Potted:uuuu-MM-dd}"), text, StringComparison.Ordinal);
            foreach (Spacing step in run.Options.Crop.Steps)
            {
                string line = FormattableString.Invariant($"from = {step.From:uuuu-MM-dd}, pattern = \"square\", distanceCm = {100 * step.DistanceM:0}");
                Assert.Contains(line, text, StringComparison.Ordinal);
            }
        }

        Assert.Contains(FormattableString.Invariant($"areaM2 = {GannetRow.HouseOneAreaM2}"), houses[0], StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"areaM2 = {GannetRow.HouseTwoAreaM2}"), houses[1], StringComparison.Ordinal);
        Assert.Equal(2, file.Split(FormattableString.Invariant($"litresPerMinute = {GannetRow.ValveLitresPerMinute}")).Length - 1);
        Assert.Contains("invented = true", file, StringComparison.Ordinal);
    }
}
