using System.Diagnostics;
using System.Globalization;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.Nursery;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>
/// What the learned check says of simulated weeks: how often it speaks where no sensor has a fault, and how often it names the right
/// sensor where one is planted. docs/science/learned-check.md quotes it.
/// </summary>
internal static class LearnedRates
{
    private const string FaultyWeek = "2025-W44";
    private static readonly string[] CleanWeeks = ["2025-W43", "2025-W44", "2025-W45"];

    private static readonly (string Name, string[] Columns)[] Equipment =
    [
        ("one instrument", ["airTemperature", "relativeHumidity", "ventPosition", "screenPosition", "heatingPipeTemperature", "heatingSetPoint"]),
        ("house and canopy", ["airTemperature", "relativeHumidity", "canopyTemperature", "canopyHumidity", "ventPosition", "screenPosition", "heatingPipeTemperature"]),
        ("every sensor", []),
    ];

    /// <summary><c>learned-rates [SEEDS [FIRST [DAYS]]]</c>: twenty from 1 on, with as many days to learn from as the program takes.</summary>
    public static int Run(string[] args)
    {
        int Given(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;
        (int seeds, int first, int days) = (Given(0, 20), Given(1, 1), Given(2, Past.HistoryDays));
        var trials = Equipment.ToDictionary(e => e.Name, _ => new List<(PlantedFault? Fault, LearnedTrial Trial)>());
        TimeSpan spent = default;
        for (int seed = first; seed < first + seeds; seed++)
        {
            NurseryRun run = NurseryRun.Of((ulong)seed);
            foreach ((string name, string[] columns) in Equipment)
            {
                foreach (HouseRun house in run.Houses)
                {
                    CleanHouse logs = CleanHouse.Of(run, house, columns);
                    HouseInput[] clean = [.. CleanWeeks.Select(week => logs.Week(week, days).Input)];
                    HouseInput faulty = clean[Array.IndexOf(CleanWeeks, FaultyWeek)];
                    long start = Stopwatch.GetTimestamp();
                    trials[name].AddRange(clean.Select(input => ((PlantedFault?)null, LearnedTrial.Of(input, null))));
                    spent += Stopwatch.GetElapsedTime(start);
                    trials[name].AddRange(PlantedFault.All.Select(f => (Fault: f, Input: f.PlantedIn(faulty))).Where(f => f.Input is not null).Select(f => ((PlantedFault?)f.Fault, LearnedTrial.Of(f.Input!, f.Fault))));
                }
            }
        }

        foreach ((string name, var all) in trials)
        {
            Print(name, seeds, all);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{spent.TotalMilliseconds / trials.Sum(t => t.Value.Count(a => a.Fault is null)):0} ms a house-week, with its alignment and checks"));
        return 0;
    }

    private static void Print(string name, int seeds, List<(PlantedFault? Fault, LearnedTrial Trial)> all)
    {
        LearnedTrial[] clean = [.. all.Where(a => a.Fault is null).Select(a => a.Trial)];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name}: {seeds} seeds, {clean.Length} clean weeks, {clean.Sum(t => (long)t.Judged)} values: {clean.Sum(t => t.Suspect)} suspect ({1000.0 * clean.Sum(t => t.Suspect) / clean.Sum(t => (long)t.Judged):0.000} in 1,000), in {clean.Count(t => t.Suspect > 0)} weeks; {clean.Count(t => t.Shifts > 0)} weeks with a shift"));
        foreach (var fault in all.Where(a => a.Fault is not null).GroupBy(a => a.Fault!.Name))
        {
            LearnedTrial[] found = [.. fault.Select(f => f.Trial)];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  {fault.Key,-45} named {found.Count(t => t.Named),3} of {found.Length}; by the other checks {found.Count(t => t.NamedByOthers),3}; another sensor shifted {found.Count(t => t.WrongShift),3}"));
        }
    }
}
