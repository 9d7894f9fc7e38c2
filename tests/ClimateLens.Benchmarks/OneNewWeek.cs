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
        List<ProcessCost> version = [], first = [], ownFile = [], grownFile = [], nothing = [];
        for (int i = 0; i < repeats; i++)
        {
            version.Add(Program("--version"));
            foreach (List<ProcessCost> newWeek in (List<ProcessCost>[])[ownFile, grownFile])
            {
                string nursery = WholeProcess.SampleNursery();
                string[] months = Directory.GetFiles(Path.Combine(Path.GetDirectoryName(nursery)!, "exports"), "*-2025-11.csv");
                Dictionary<string, string[]> whole = months.ToDictionary(file => file, File.ReadAllLines);
                foreach ((string file, string[] lines) in whole)
                {
                    File.WriteAllLines(file, lines.Where(line => !IsInLastWeek(line)));
                }

                first.Add(Program("run", nursery, "--quiet"));
                foreach ((string file, string[] lines) in whole)
                {
                    if (newWeek == ownFile)
                    {
                        File.WriteAllLines(file.Replace("-2025-11", "-2025-week-45", StringComparison.Ordinal), lines.Where(line => IsInLastWeek(line) || !IsStamped(line)));
                    }
                    else
                    {
                        File.WriteAllLines(file, lines);
                    }
                }

                newWeek.Add(Program("run", nursery, "--quiet"));
                nothing.Add(Program("run", nursery, "--quiet"));
                Directory.Delete(Path.GetDirectoryName(Path.GetDirectoryName(nursery))!, recursive: true);
            }
        }

        Console.WriteLine(MeasuredProcess.Describe("--version", version));
        Console.WriteLine(MeasuredProcess.Describe("first run, nine weeks of two houses", first));
        Console.WriteLine(MeasuredProcess.Describe("one new week of two houses, in files of its own", ownFile));
        Console.WriteLine(MeasuredProcess.Describe("one new week of two houses, in the files of the month", grownFile));
        Console.WriteLine(MeasuredProcess.Describe("nothing new", nothing));
        return 0;
    }

    /// <summary>Whether a line begins with a day, in the ways of writing of the samples; the heads of the files do not.</summary>
    private static bool IsStamped(string line) => line.Length > 10 && char.IsAsciiDigit(line[0]) && char.IsAsciiDigit(line[1]);

    /// <summary>After the first moment of 3 November 2025, in the ways of writing of the samples: that stamp ends the last interval of the week before.</summary>
    private static bool IsInLastWeek(string line)
        => Enumerable.Range(3, 7).Any(day => line.StartsWith($"0{day}-11-2025", StringComparison.Ordinal) || line.StartsWith($"2025-11-0{day}", StringComparison.Ordinal))
            && !(line.StartsWith("03-11-2025 00:00", StringComparison.Ordinal) || line.StartsWith("2025-11-03 00:00:00", StringComparison.Ordinal) || line.StartsWith("2025-11-03T00:00:00", StringComparison.Ordinal));
}
