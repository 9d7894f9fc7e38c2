using System.Globalization;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>How well risk hours are recovered on simulated weeks; docs/validation.md quotes it.</summary>
internal static class RiskRecoveryTable
{
    private static readonly string[] Weeks = [.. Enumerable.Range(37, 9).Select(w => $"2025-W{w}")];

    private static readonly (bool Canopy, bool Biased, bool Drawn)[] Cases =
        [(false, true, true), (true, true, true), (false, false, true), (true, false, true), (false, false, false), (true, false, false)];

    /// <summary><c>risk-recovery [SEEDS]</c>, twenty by default.</summary>
    public static int Run(string[] args)
    {
        int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 20;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seeds} seeds, {Weeks.Length} weeks, those that are off are so by up to 0.5 K and 3 %"));
        Console.WriteLine("| House | Canopy sensor | Sensors | Houses | House-weeks | Truth, mean h | Found, mean h | Mean difference | Within 15 % or 2 h | Range holds truth | Mean width of range |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|");
        foreach ((bool canopy, bool biased, bool drawn) in Cases)
        {
            RecoveredWeek[] all = [.. Enumerable.Range(1, seeds).SelectMany(seed => RiskRecovery.Of((ulong)seed, canopy, biased, drawn, Weeks))];
            foreach (IGrouping<string, RecoveredWeek> house in all.GroupBy(w => w.House).Append(new Everything(all)))
            {
                RecoveredWeek[] weeks = [.. house];
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {house.Key} | {(canopy ? "yes" : "no")} | {(biased ? "off" : "true")} | {(drawn ? "differ" : "alike")} | {weeks.Length} | {weeks.Average(w => w.Truth):0.0} | {weeks.Average(w => w.Found.Value):0.0} | {weeks.Average(w => w.Found.Value - w.Truth):+0.0;-0.0} | {Share(weeks, w => w.IsNear)} | {Share(weeks, w => w.Covers)} | {weeks.Average(w => w.Found.High - w.Found.Low):0} |"));
            }
        }

        return 0;
    }

    private static string Share(RecoveredWeek[] weeks, Func<RecoveredWeek, bool> holds)
        => string.Create(CultureInfo.InvariantCulture, $"{100.0 * weeks.Count(holds) / weeks.Length:0} %");

    private sealed class Everything(RecoveredWeek[] weeks) : IGrouping<string, RecoveredWeek>
    {
        public string Key => "both";

        public IEnumerator<RecoveredWeek> GetEnumerator() => ((IEnumerable<RecoveredWeek>)weeks).GetEnumerator();

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
