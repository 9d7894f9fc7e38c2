using System.Globalization;
using NodaTime;

namespace ClimateLens.Benchmarks;

/// <summary>How time and memory of an import grow with the rows of its file: ten times the rows, at most eleven times the time.</summary>
internal static class ImportGrowth
{
    private const int DefaultRows = 200_000;
    private const int DefaultRepeats = 5;
    private const int Factor = 10;

    /// <summary><c>growth [ROWS] [REPEATS]</c>: that many rows, and ten times as many.</summary>
    public static int Run(string[] args)
    {
        int rows = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : DefaultRows;
        int repeats = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : DefaultRepeats;
        using var program = new PublishedProgram();
        using GeneratedNursery little = Nursery(rows), much = Nursery(rows * Factor);
        List<ProcessCost> few = [], many = [];
        for (int i = 0; i < repeats; i++)
        {
            few.Add(Import(program, little));
            many.Add(Import(program, much));
        }

        Console.WriteLine(MeasuredProcess.Describe($"{rows} rows", few));
        Console.WriteLine(MeasuredProcess.Describe($"{rows * Factor} rows", many));
        Console.WriteLine($"{Factor} times the rows: {MeasuredProcess.Ratio(many, few)}");
        return 0;
    }

    private static GeneratedNursery Nursery(int rows)
    {
        var nursery = new GeneratedNursery();
        nursery.Export("climate.csv", Instant.FromUtc(2021, 1, 1, 0, 0), rows, stepMinutes: 1);
        return nursery;
    }

    private static ProcessCost Import(PublishedProgram program, GeneratedNursery nursery)
    {
        nursery.RemoveStore();
        return program.Run("import", nursery.File, "--quiet");
    }
}
