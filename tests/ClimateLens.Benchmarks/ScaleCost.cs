using System.Globalization;

namespace ClimateLens.Benchmarks;

/// <summary>Whole runs over nurseries of several sizes, import, reviews and pages; docs/performance.md quotes them.</summary>
internal static class ScaleCost
{
    /// <summary><c>scale HOUSESxWEEKS …</c>, for example <c>scale 10x26 10x52 20x52</c>: one run of each, one more with nothing new, one after a week more of every house, and one after a correction to the last row of that week.</summary>
    public static int Run(string[] sizes)
    {
        using PublishedProgram program = new();
        Console.WriteLine("| houses x weeks | time, s | house-weeks a second | processor time a house-week, s | peak memory, MiB | nothing new, s | a new week of each house, s | newest week of each house corrected, s |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|");
        foreach (string size in sizes)
        {
            int[] parts = [.. size.Split('x').Select(part => int.Parse(part, CultureInfo.InvariantCulture))];
            int count = parts[0] * parts[1];
            string folder = Directory.CreateTempSubdirectory("climatelens-bench-").FullName;
            string nursery = ManyHouses.Make(folder, parts[0], parts[1]);
            ProcessCost first = program.Run("run", nursery, "--quiet"), second = program.Run("run", nursery, "--quiet");
            ManyHouses.AddWeek(folder, parts[0], parts[1]);
            ProcessCost third = program.Run("run", nursery, "--quiet");
            foreach (string file in Directory.EnumerateFiles(Path.Combine(folder, "exports"), "house-*-new.csv"))
            {
                CorrectLastRow(file);
            }

            ProcessCost fourth = program.Run("run", nursery, "--quiet");
            Directory.Delete(folder, recursive: true);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {size} | {first.Seconds:0} | {count / first.Seconds:0.00} | {first.ProcessorSeconds / count:0.00} | {Math.Max(first.Mebibytes, second.Mebibytes):0} | {second.Seconds:0.0} | {third.Seconds:0.0} | {fourth.Seconds:0.0} |"));
        }

        return 0;
    }

    /// <summary>Another digit at the end of the first reading of the last row.</summary>
    private static void CorrectLastRow(string file)
    {
        string text = File.ReadAllText(file).TrimEnd('\n');
        char mark = text.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        int first = text.IndexOf(mark, text.LastIndexOf('\n')), end = text.IndexOf(mark, first + 1);
        File.WriteAllText(file, $"{text[..(end - 1)]}{(text[end - 1] == '5' ? '6' : '5')}{text[end..]}\n");
    }
}
