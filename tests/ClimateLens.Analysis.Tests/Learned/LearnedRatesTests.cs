using ClimateLens.Analysis.Learned;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.Nursery;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Analysis.Tests.Learned;

/// <summary>
/// A part of what <c>learned-rates</c> of the benchmarks tries: simulated weeks with and without faults, two seeds, both houses.
/// docs/science/learned-check.md has the whole table.
/// </summary>
public sealed class LearnedRatesTests
{
    private static readonly CleanHouse[] Houses = [.. new ulong[] { 1, 2 }.Select(NurseryRun.Of).SelectMany(run => run.Houses.Select(house => CleanHouse.Of(run, house, Canopy)))];

    private static readonly string[] CleanWeeks = ["2025-W43", "2025-W45"];

    private static string[] Canopy => ["airTemperature", "relativeHumidity", "canopyTemperature", "canopyHumidity", "ventPosition", "screenPosition", "heatingPipeTemperature"];

    public static TheoryData<string, int> Faults => new()
    {
        // fault, fewest named of 4
        { "one temperature 4 K too high", 3 },
        { "temperature 2 K too high from Thursday on", 4 },
        { "humidity 8 points too high from Thursday on", 3 },
        { "humidity drifts up by 1 point a day", 2 },
        { "house and canopy instruments swapped", 3 },
        { "instrument moved into the sun", 4 },
    };

    [Fact]
    public void CleanWeeks_StayWithinTheRatesThatPagesQuote()
    {
        LearnedTrial[] trials = [.. Houses.SelectMany(house => CleanWeeks.Select(week => LearnedTrial.Of(Input(house, week), null)))];
        Assert.True(trials.Sum(t => t.Judged) > 90_000, $"{trials.Sum(t => t.Judged)} judged");

        // Rates of a few weeks scatter: five times the quoted share of values, and one week beyond the quoted share of weeks.
        Assert.InRange(1000.0 * trials.Sum(t => t.Suspect) / trials.Sum(t => t.Judged), 0, 5 * LearnedRates.SuspectOfThousand);
        Assert.InRange(trials.Count(t => t.Shifts > 0), 0, 1 + (int)Math.Ceiling(trials.Length * LearnedRates.ShiftsOfHundredWeeks / 100));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void PlantedFault_IsNamed(string name, int fewest)
    {
        PlantedFault fault = PlantedFault.All.Single(f => f.Name == name);
        LearnedTrial[] trials = [.. Houses.Select(house => LearnedTrial.Of(fault.PlantedIn(Input(house, "2025-W44"))!, fault))];
        Assert.InRange(trials.Count(t => t.Named), fewest, trials.Length);
    }

    private static HouseInput Input(CleanHouse house, string week) => house.Week(week, Past.HistoryDays).Input;
}
