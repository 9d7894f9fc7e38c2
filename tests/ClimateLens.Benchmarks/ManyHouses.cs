using System.Globalization;
using System.Text.RegularExpressions;
using ClimateLens.TestKit;

namespace ClimateLens.Benchmarks;

/// <summary>
/// A nursery of many houses over many weeks: the ten weeks of the sample logs, readings and records, laid end to end with their dates
/// moved, and the two houses taken in turn. So each house-week has waterings, pot checks, causes and pages as a real one has.
/// </summary>
internal static partial class ManyHouses
{
    private const int SampleDays = 70;
    private static readonly DateOnly First = new(2025, 9, 1);

    /// <summary><c>generate-nursery FOLDER HOUSES WEEKS</c>: such a nursery, to stay.</summary>
    public static int Keep(string folder, string houses, string weeks)
    {
        Make(folder, int.Parse(houses, CultureInfo.InvariantCulture), int.Parse(weeks, CultureInfo.InvariantCulture));
        return 0;
    }

    /// <summary><c>add-week FOLDER HOUSES WEEKS</c>: the week behind those.</summary>
    public static int KeepWeek(string folder, string houses, string weeks)
    {
        AddWeek(folder, int.Parse(houses, CultureInfo.InvariantCulture), int.Parse(weeks, CultureInfo.InvariantCulture));
        return 0;
    }

    /// <summary>Writes the nursery; answers with its file.</summary>
    public static string Make(string folder, int houses, int weeks)
    {
        Write(folder, houses, First, weeks, "all");
        string file = Path.Combine(folder, "nursery.toml");
        File.WriteAllText(file, NurseryFile(File.ReadAllText(Path.Combine(Repository.PathOf("sample-logs"), "nursery.toml")), houses));
        return file;
    }

    /// <summary>Adds the week behind those that there are: readings in files of their own, records in the files that hold the others.</summary>
    public static void AddWeek(string folder, int houses, int weeks) => Write(folder, houses, First.AddDays(7 * weeks), weeks + 1, "new");

    private static void Write(string folder, int houses, DateOnly from, int weeks, string name)
    {
        string sample = Repository.PathOf("sample-logs");
        DateOnly end = First.AddDays(7 * weeks);
        Directory.CreateDirectory(Path.Combine(folder, "exports"));
        Directory.CreateDirectory(Path.Combine(folder, "records"));
        for (int house = 1; house <= houses; house++)
        {
            int of = Twin(house);
            Repeat([.. Months(sample, $"house-{of}")], of == 1 ? 2 : 1, Path.Combine(folder, "exports", $"house-{house}-{name}.csv"), from, end, line => line);
        }

        Repeat([.. Months(sample, "weather")], 1, Path.Combine(folder, "exports", $"weather-{name}.csv"), from, end, line => line);
        foreach (string record in Directory.EnumerateFiles(Path.Combine(sample, "records")))
        {
            string kind = Path.GetFileNameWithoutExtension(record);
            if (kind == "waterings-house-1")
            {
                Repeat([record], 1, Path.Combine(folder, "records", "waterings.csv"), First, end, line => line);
                continue;
            }

            int column = Array.IndexOf(File.ReadLines(record).First().Split(','), "house");
            Repeat([record], 1, Path.Combine(folder, "records", kind + ".csv"), First, end, line => string.Join('\n', ForEach(line, column, houses)));
        }
    }

    private static int Twin(int house) => house % 2 == 1 ? 1 : 2;

    private static IEnumerable<string> Months(string sample, string name)
        => Directory.EnumerateFiles(Path.Combine(sample, "exports"), name + "-????-??.csv").Order(StringComparer.Ordinal);

    private static void Repeat(string[] files, int headLines, string to, DateOnly from, DateOnly end, Func<string, string> eachHouse)
    {
        string[][] lines = [.. files.Select(File.ReadAllLines)];
        using StreamWriter writer = new(to);
        foreach (string head in lines[0].Take(headLines))
        {
            writer.Write(head + "\n");
        }

        for (int days = 0; First.AddDays(days) < end; days += SampleDays)
        {
            foreach (string line in lines.SelectMany(file => file.Skip(headLines)))
            {
                DateOnly last = First;
                string moved = Date().Replace(line, match => Moved(match, days, ref last));
                if (last >= from && last < end)
                {
                    writer.Write(eachHouse(moved) + "\n");
                }
            }
        }
    }

    private static string Moved(Match match, int days, ref DateOnly last)
    {
        string format = match.Groups["year"].Success ? "yyyy-MM-dd" : "dd-MM-yyyy";
        last = DateOnly.ParseExact(match.Value, format, CultureInfo.InvariantCulture).AddDays(days);
        return last.ToString(format, CultureInfo.InvariantCulture);
    }

    private static IEnumerable<string> ForEach(string line, int column, int houses)
    {
        string[] fields = line.Split(',');
        int of = int.Parse(fields[column], CultureInfo.InvariantCulture);
        for (int house = of; house <= houses; house += 2)
        {
            fields[column] = house.ToString(CultureInfo.InvariantCulture);
            yield return string.Join(',', fields);
        }
    }

    private static string NurseryFile(string sample, int houses)
    {
        string[] blocks = Block().Split(sample);
        IEnumerable<string> house = Enumerable.Range(1, houses).SelectMany(id => blocks.Where(b => b.StartsWith("[[house]]", StringComparison.Ordinal) && b.Contains($"\nid = \"{Twin(id)}\"", StringComparison.Ordinal))
            .Select(b => b.Replace($"\nid = \"{Twin(id)}\"", $"\nid = \"{id}\"", StringComparison.Ordinal).Replace($"\"House {Twin(id)}\"", $"\"House {id}\"", StringComparison.Ordinal)));
        IEnumerable<string> own = Enumerable.Range(1, houses).SelectMany(id => blocks.Where(b => b.StartsWith("[[export]]", StringComparison.Ordinal) && b.Contains($"\nhouse = \"{Twin(id)}\"", StringComparison.Ordinal))
            .Select(b => b.Replace($"\nhouse = \"{Twin(id)}\"", $"\nhouse = \"{id}\"", StringComparison.Ordinal)
                .Replace($"exports/house-{Twin(id)}-*.csv", $"exports/house-{id}-*.csv", StringComparison.Ordinal).Replace("waterings-house-1", "waterings", StringComparison.Ordinal)));
        IEnumerable<string> shared = blocks.Where(b => b.StartsWith("[[export]]", StringComparison.Ordinal) && !b.Contains("\nhouse = \"", StringComparison.Ordinal));
        string head = SiteLine().Replace(blocks[0], "site = \"site\"").Replace("Gannet Row", "Benchmark", StringComparison.Ordinal);
        return string.Concat([head, .. house, .. own, .. shared]);
    }

    [GeneratedRegex(@"(?<year>\d{4})-\d\d-\d\d|\d\d-\d\d-\d{4}")]
    private static partial Regex Date();

    [GeneratedRegex(@"(?m)(?=^\[\[(?:house|export)\]\])", RegexOptions.ExplicitCapture)]
    private static partial Regex Block();

    [GeneratedRegex("(?m)^site = .*$")]
    private static partial Regex SiteLine();
}
