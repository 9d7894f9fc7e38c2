using System.Globalization;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>Levels foretold for the day after each simulated week against the pots themselves: the table of docs/validation.md.</summary>
internal static class PotRecoveryTable
{
    private const int UsualSeeds = 20;

    public static int Run(string[] args)
    {
        int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : UsualSeeds;
        RecoveredLevel[] levels = [.. Enumerable.Range(1, seeds).SelectMany(seed => PotRecovery.Of((ulong)seed))];
        Console.WriteLine("| House | Levels foretold | Miss, rms | Same as yesterday, rms | In the range |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (var house in levels.GroupBy(l => l.House).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            Row(house.Key, [.. house]);
        }

        Row("both", levels);
        return 0;
    }

    private static void Row(string name, RecoveredLevel[] levels)
    {
        double held = levels.Count(l => l.Forecast.Low <= l.Truth && l.Truth <= l.Forecast.High) / (double)levels.Length;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {levels.Length} | {Rms(levels.Select(l => l.Forecast.Value - l.Truth)):F2} | {Rms(levels.Select(l => l.Yesterday - l.Truth)):F2} | {100 * held:F0} % |"));
    }

    private static double Rms(IEnumerable<double> misses) => Math.Sqrt(misses.Average(m => m * m));
}
