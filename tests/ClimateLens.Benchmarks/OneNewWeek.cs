using System.Globalization;

namespace ClimateLens.Benchmarks;

/// <summary>A run that finds one new week of two houses: the sample logs up to their last week, then with it.</summary>
internal static class OneNewWeek
{
    /// <summary><c>one-new-week [REPEATS] [PROGRAM]</c>: five by default, of the program as <c>dotnet publish</c> makes it or of one that stands.</summary>
    public static int Run(string[] args)
    {
        int repeats = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 5;
        using PublishedProgram? published = args.Length > 1 ? null : new PublishedProgram();
        ProcessCost Program(params string[] to) => published is null ? MeasuredProcess.RunNative(args[1], to) : published.Run(to);
        List<ProcessCost> version = [], first = [], newWeek = [], nothing = [];
        for (int i = 0; i < repeats; i++)
        {
            string nursery = WholeProcess.SampleNursery(), exports = Path.Combine(Path.GetDirectoryName(nursery)!, "exports");
            Dictionary<string, string> last = [];
            foreach (string file in Directory.EnumerateFiles(exports, "*-2025-11.csv"))
            {
                last[file] = File.ReadAllText(file);
                File.WriteAllLines(file, File.ReadLines(file).Where(line => !IsInLastWeek(line)));
            }

            version.Add(Program("--version"));
            first.Add(Program("run", nursery, "--quiet"));
            foreach ((string file, string text) in last)
            {
                File.WriteAllText(file, text);
            }

            newWeek.Add(Program("run", nursery, "--quiet"));
            nothing.Add(Program("run", nursery, "--quiet"));
            Directory.Delete(Path.GetDirectoryName(Path.GetDirectoryName(nursery))!, recursive: true);
        }

        Console.WriteLine(MeasuredProcess.Describe("--version", version));
        Console.WriteLine(MeasuredProcess.Describe("first run, nine weeks of two houses", first));
        Console.WriteLine(MeasuredProcess.Describe("one new week of two houses", newWeek));
        Console.WriteLine(MeasuredProcess.Describe("nothing new", nothing));
        return 0;
    }

    /// <summary>3 to 9 November 2025, in the ways of writing of the samples.</summary>
    private static bool IsInLastWeek(string line)
        => Enumerable.Range(3, 7).Any(day => line.StartsWith($"0{day}-11-2025", StringComparison.Ordinal) || line.StartsWith($"2025-11-0{day}", StringComparison.Ordinal));
}
