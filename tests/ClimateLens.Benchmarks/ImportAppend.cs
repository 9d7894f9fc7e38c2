using System.Globalization;
using NodaTime;

namespace ClimateLens.Benchmarks;

/// <summary>A week of five-minute rows into an empty store and into one that holds ten years before it, whose exports lie beside it.</summary>
internal static class ImportAppend
{
    private const int DefaultYears = 10;
    private const int DefaultPairs = 7;
    private const int StepMinutes = 5;
    private const int RowsOfDay = 24 * 60 / StepMinutes;

    /// <summary><c>append [YEARS] [PAIRS]</c>.</summary>
    public static int Run(string[] args)
    {
        int years = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : DefaultYears;
        int pairs = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : DefaultPairs;
        using var program = new PublishedProgram();
        using GeneratedNursery empty = new(), full = new();
        Instant week = Instant.FromUtc(2025, 6, 30, 0, 0);
        for (int year = 0; year < years; year++)
        {
            Instant from = week - Duration.FromDays(365 * (years - year));
            full.Export($"year-{year:00}.csv", from, 365 * RowsOfDay, StepMinutes);
        }

        program.Run("import", full.File, "--quiet");
        full.KeepStore();
        empty.Export("week.csv", week, 7 * RowsOfDay, StepMinutes);
        full.Export("week.csv", week, 7 * RowsOfDay, StepMinutes);
        List<ProcessCost> first = [], later = [];
        for (int i = 0; i < pairs; i++)
        {
            empty.RemoveStore();
            first.Add(program.Run("import", empty.File, "--quiet"));
            full.TakeStoreBack();
            later.Add(program.Run("import", full.File, "--quiet"));
        }

        Console.WriteLine(MeasuredProcess.Describe("a week into an empty store", first));
        Console.WriteLine(MeasuredProcess.Describe($"a week behind {years} years", later));
        Console.WriteLine($"behind {years} years: {MeasuredProcess.Ratio(later, first)}");
        return 0;
    }
}
