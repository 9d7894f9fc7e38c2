using ClimateLens.Logs.Tests.Describe;
using ClimateLens.Logs.Tests.Made;

namespace ClimateLens.Logs.Tests;

/// <summary>Exports made by chance come back as they were written, or the draft asks.</summary>
public sealed class RoundTripTests
{
    [Fact]
    public void Describe_OfMadeExports_IsNeverWrongAndMostlyWhole()
    {
        int runs = MadeRuns.Count;
        var outcomes = new Dictionary<Outcome, int>();
        int askable = 0;
        var wrong = new List<string>();
        for (int seed = MadeRuns.First; seed < MadeRuns.First + runs; seed++)
        {
            MadeExport made = ExportMaker.Make(seed);
            (Outcome outcome, string why) = RoundTrip.Of(made);
            askable += made.Style.NoNames || made.Style.Stamp.LacksYear ? 1 : 0;
            outcomes[outcome] = outcomes.GetValueOrDefault(outcome) + 1;
            if (outcome != Outcome.Read)
            {
                wrong.Add($"=== seed {seed} {outcome}: {why}");
                MadeRuns.Keep(seed, made);
            }
        }

        MadeRuns.Log([.. outcomes.Select(o => $"{o.Key} {o.Value}"), .. wrong]);
        Assert.True(outcomes.GetValueOrDefault(Outcome.Wrong) == 0, string.Join('\n', wrong.Where(w => w.Contains(" Wrong:", StringComparison.Ordinal)).Take(3)));
        Assert.True(outcomes.GetValueOrDefault(Outcome.Read) >= 0.8 * (runs - askable), string.Join('\n', outcomes));
    }
}
