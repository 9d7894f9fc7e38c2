using ClimateLens.HouseSimulator.Output;
using ClimateLens.HouseSimulator.Records;
using ClimateLens.HouseSimulator.Truth;

namespace ClimateLens.HouseSimulator;

/// <summary>The sample logs: everything that <c>sample-logs/</c> holds, from one seed.</summary>
public static class SampleNursery
{
    /// <summary>Seed of the committed sample logs.</summary>
    public const ulong DefaultSeed = 3;

    /// <summary>Simulates and writes the sample logs beneath a folder; other files there are left alone.</summary>
    public static void Write(string folder, ulong seed = DefaultSeed) => Make(NurseryRun.Of(seed)).Write(folder);

    /// <summary>The files of a run, not yet written.</summary>
    public static FileSet Make(NurseryRun run)
    {
        var files = new FileSet();
        ExportWriter.Write(files, run);
        var weekly = new WeeklyBooks(run);
        files.Add("records/waterings-house-1.csv", WateringLog.Write(run));
        files.Add("records/pot-checks.csv", new PotCheckBook(run).Write());
        files.Add("records/plant-widths.csv", weekly.PlantWidths());
        files.Add("records/treatments.csv", TreatmentBook.Write());
        files.Add("records/floors.csv", WeeklyBooks.Floors());
        files.Add("records/tanks.csv", weekly.Tanks());
        files.Add("records/scouting.csv", weekly.Scouting());
        files.Add("nursery.toml", Text("nursery.toml"));
        files.Add("README.md", Text("README.md"));
        TruthWriter.Write(files, run);
        return files;
    }

    private static string Text(string name)
    {
        using Stream stream = typeof(SampleNursery).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
