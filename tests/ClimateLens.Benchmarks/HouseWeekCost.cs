using System.Globalization;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.Nursery;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>What the review of a house-week costs, with the weeks before it and without them; docs/performance.md quotes it.</summary>
internal static class HouseWeekCost
{
    private const int Repeats = 9, WarmUps = 12;

    /// <summary><c>house-week</c>: processor time of a review after warm-up, medians.</summary>
    public static int Run()
    {
        NurseryRun run = NurseryRun.Of(1);
        HouseInput boom = SimulatedWeek.Of(run, run.HouseOne, "2025-W42", null, Past.HistoryDays), drip = SimulatedWeek.Of(run, run.HouseTwo, "2025-W42", null, Past.HistoryDays);
        (string Name, HouseInput Input)[] cases =
        [
            ("boom over the leaves, four weeks before", boom),
            ("the same, no weeks before: no causes, outlook or learned check", boom with { History = [] }),
            ("drip in the morning, four weeks before", drip),
        ];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Review of a house-week in steps of 5 min, one thread; medians of {Repeats} after {WarmUps} to warm up"));
        Console.WriteLine("| House-week | processor time, ms | allocated, MB |");
        Console.WriteLine("|---|---|---|");
        foreach ((string name, HouseInput input) in cases)
        {
            for (int i = 0; i < WarmUps; i++)
            {
                _ = ReviewPipeline.Run(input);
            }

            double[] times = [.. Enumerable.Range(0, Repeats).Select(_ => Measure(input)).Order()];
            long before = GC.GetAllocatedBytesForCurrentThread();
            _ = ReviewPipeline.Run(input);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {times[Repeats / 2]:0} | {(GC.GetAllocatedBytesForCurrentThread() - before) / 1e6:0} |"));
        }

        return 0;
    }

    private static double Measure(HouseInput input) => ProcessorTime.MillisecondsOf(() => _ = ReviewPipeline.Run(input));
}
