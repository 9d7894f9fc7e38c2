using System.Globalization;
using ClimateLens.Science.Agreement;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>How well hours avoided are recovered on simulated weeks; docs/validation.md quotes it.</summary>
internal static class CausesRecoveryTable
{
    private static readonly string[] Weeks = ["2025-W40", "2025-W42", "2025-W44"];

    /// <summary><c>causes-recovery [SEEDS [FIRST]]</c>, thirty from the first by default.</summary>
    public static int Run(string[] args)
    {
        int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 30;
        int first = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
        RecoveredChange[] all = [.. Enumerable.Range(first, seeds).AsParallel().AsOrdered().SelectMany(seed => CausesRecovery.Of((ulong)seed, biased: true, Weeks))];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seeds} seeds from {first} on, {Weeks.Length} weeks, sensors off by up to 0.5 K and 3 %, houses that differ in what nobody logs"));
        Console.WriteLine("| House | Had we | House-weeks | Told | True hours avoided, mean | Found, mean | Within 25 % or 2 h | Range holds truth | Mean width of range |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var group in all.GroupBy(c => (c.House, c.WhatIf)).Concat(all.GroupBy(c => (House: "both", c.WhatIf))))
        {
            RecoveredChange[] told = [.. group.Where(c => c.Found is not null)];
            Console.WriteLine(told.Length == 0
                ? string.Create(CultureInfo.InvariantCulture, $"| {group.Key.House} | {group.Key.WhatIf} | {group.Count()} | 0 | | | | | |")
                : string.Create(CultureInfo.InvariantCulture, $"| {group.Key.House} | {group.Key.WhatIf} | {group.Count()} | {told.Length} | {told.Average(c => c.Truth):0.0} | {told.Average(c => c.Found!.Value):0.0} | {Share(told, c => c.IsNear)} | {Share(told, c => c.Covers)} | {told.Average(c => c.Found!.High - c.Found.Low):0} |"));
        }

        Stretch(all);
        Labels(all);
        RecoveredChange[] weeks = [.. all.Where(c => c.WhatIf == "all" && c.LateShare is not null)];
        RecoveredChange[] drip = [.. weeks.Where(c => c.House == "2")];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"House 2 (drip in the morning) is charged 1 h or less to late watering in {Share(drip, c => c.LateShare <= 1)} of {drip.Length} weeks told"));
        Weather(weeks);
        return 0;
    }

    /// <summary>Agreement of the change that helps most, as the page names it and as it truly was, beyond chance.</summary>
    private static void Labels(RecoveredChange[] all)
    {
        (int Truth, int Found)[] pairs =
        [
            .. all.Where(c => c.WhatIf != "all").GroupBy(c => (c.Seed, c.House, c.Week)).Where(week => week.All(c => c.Found is not null))
                .Select(week => (Label([.. week.Select(c => (double)c.Truth)]), Label([.. week.Select(c => c.Found!.Value)]))),
        ];
        AgreementTable table = AgreementTable.OfPairs(Changes + 1, pairs);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"The change that helps most (one of {Changes}, or none that avoids {LeastHours} h), named and true: the same in {100.0 * pairs.Count(p => p.Truth == p.Found) / pairs.Length:0} % of {pairs.Length} house-weeks, Cohen's kappa {WeightedKappa.Of(table, KappaWeights.None):0.00} (standard error {WeightedKappa.StandardError(table, KappaWeights.None):0.00})"));
    }

    private const int Changes = 4;
    private const double LeastHours = 3;

    private static int Label(double[] avoided) => avoided.Max() < LeastHours ? Changes : Array.IndexOf(avoided, avoided.Max());

    /// <summary>How far the truth lay beyond the value, in widths of the range to that side: what the range would have to be stretched by to hold it in nine weeks of ten.</summary>
    private static void Stretch(RecoveredChange[] all)
    {
        foreach (var group in all.Where(c => c.Found is not null).GroupBy(c => c.WhatIf))
        {
            double[] up = [.. group.Where(c => c.Truth > c.Found!.Value).Select(c => (c.Truth - c.Found!.Value) / Math.Max(0.5, c.Found.High - c.Found.Value)).Order()];
            double[] down = [.. group.Where(c => c.Truth < c.Found!.Value).Select(c => (c.Found!.Value - c.Truth) / Math.Max(0.5, c.Found.Value - c.Found.Low)).Order()];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{group.Key}: truth above in {up.Length}, of {group.Count()}, widths up at 80, 90 and 95 %: {At(up, 0.8):0.0} {At(up, 0.9):0.0} {At(up, 0.95):0.0}; below in {down.Length}, down: {At(down, 0.8):0.0} {At(down, 0.9):0.0} {At(down, 0.95):0.0}"));
        }
    }

    private static double At(double[] ordered, double share) => ordered.Length == 0 ? double.NaN : ordered[Math.Min(ordered.Length - 1, (int)(share * ordered.Length))];

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
