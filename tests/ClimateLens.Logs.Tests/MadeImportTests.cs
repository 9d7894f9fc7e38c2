using ClimateLens.Logs.Tests.Made;

namespace ClimateLens.Logs.Tests;

/// <summary>
/// Exports made by chance, with torn rows, are imported by settings that know them: every value comes back at its instant or is set aside
/// with its line.
/// </summary>
public sealed class MadeImportTests
{
    [Fact]
    public void Import_OfMadeExports_LosesNothingAndReadsNothingWrong()
    {
        var faults = new List<string>();
        for (int seed = MadeRuns.First; seed < MadeRuns.First + MadeRuns.Count; seed++)
        {
            MadeExport made = ExportMaker.Make(seed);
            using var nursery = new TestNursery(made.Toml, made.Style.Zone);
            nursery.Write(made.FileName, made.Bytes);
            ImportReport report = nursery.Import();
            IReadOnlyList<string> found = ImportOracle.Faults(made, made.Columns.Where(c => c.IsChannel).Select(c => (c, c.Key)), nursery.Load(), nursery.SetAside().Select(a => (a.Line, a.Code)));
            if (found.Count > 0)
            {
                faults.Add($"=== seed {seed}: {made.Story}\n{string.Join('\n', found.Take(8))}{(found.Count > 8 ? $"\nand {found.Count - 8} more" : "")}\n{string.Join('\n', report.Problems.Take(8))}");
                MadeRuns.Keep(seed, made);
            }
        }

        MadeRuns.Log(faults);
        Assert.True(faults.Count == 0, $"{faults.Count} of {MadeRuns.Count}\n{string.Join("\n\n", faults.Take(3))}");
    }
}
