using System.Globalization;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>How well hours avoided are recovered on simulated weeks; docs/validation.md quotes it.</summary>
internal static class CausesRecoveryTable
{
    private static readonly string[] Weeks = ["2025-W40", "2025-W42", "2025-W44"];

    /// <summary><c>causes-recovery [SEEDS]</c>, thirty by default.</summary>
    public static int Run(string[] args)
    {
        int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 30;
        RecoveredChange[] all = [.. Enumerable.Range(1, seeds).AsParallel().AsOrdered().SelectMany(seed => CausesRecovery.Of((ulong)seed, biased: true, Weeks))];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seeds} seeds, {Weeks.Length} weeks, sensors off by up to 0.5 K and 3 %, houses that differ in what nobody logs"));
        Console.WriteLine("| House | Had we | House-weeks | Told | True hours avoided, mean | Found, mean | Within 25 % or 2 h | Range holds truth | Mean width of range |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var group in all.GroupBy(c => (c.House, c.WhatIf)).Concat(all.GroupBy(c => (House: "both", c.WhatIf))))
        {
            RecoveredChange[] told = [.. group.Where(c => c.Found is not null)];
            Console.WriteLine(told.Length == 0
                ? string.Create(CultureInfo.InvariantCulture, $"| {group.Key.House} | {group.Key.WhatIf} | {group.Count()} | 0 | | | | | |")
                : string.Create(CultureInfo.InvariantCulture, $"| {group.Key.House} | {group.Key.WhatIf} | {group.Count()} | {told.Length} | {told.Average(c => c.Truth):0.0} | {told.Average(c => c.Found!.Value):0.0} | {Share(told, c => c.IsNear)} | {Share(told, c => c.Covers)} | {told.Average(c => c.Found!.High - c.Found.Low):0} |"));
        }

        RecoveredChange[] weeks = [.. all.Where(c => c.WhatIf == "all" && c.LateShare is not null)];
        RecoveredChange[] drip = [.. weeks.Where(c => c.House == "2")];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"House 2 (drip in the morning) is charged 1 h or less to late watering in {Share(drip, c => c.LateShare <= 1)} of {drip.Length} weeks told"));
        Weather(weeks);
        return 0;
    }

    /// <summary>Weeks that other doing would truly have kept nearly dry: the weather may not be blamed for them.</summary>
    private static void Weather(RecoveredChange[] weeks)
    {
        RecoveredChange[] dry = [.. weeks.Where(w => w.House == "1" && w.TrueRisk >= FewestRiskHours && w.Truth >= DryShare * w.TrueRisk)];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"House 1, {dry.Length} weeks with {FewestRiskHours} risk hours or more of which other doing would truly have avoided {DryShare:0 %} or more: the weather is charged {dry.Average(w => w.WeatherShare):0.0} of {dry.Average(w => w.Risk):0.0} risk hours on the mean, and more than half of them in {Share(dry, w => w.WeatherShare > w.Risk / 2)}"));
    }

    private const int FewestRiskHours = 5;
    private const double DryShare = 0.8;

    private static string Share(RecoveredChange[] changes, Func<RecoveredChange, bool> holds)
        => string.Create(CultureInfo.InvariantCulture, $"{100.0 * changes.Count(holds) / Math.Max(1, changes.Length):0} %");
}
