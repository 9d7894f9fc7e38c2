using ClimateLens.HouseSimulator.Crop;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Records;

/// <summary>Rounds of pot checks: two or three on a working day, one at most on a day of the weekend.</summary>
public sealed class PotCheckBook(NurseryRun run)
{
    private static readonly int[] RoundStarts = [435, 750, 960];
    private readonly SeededRandom _random = Seeds.Stream(run.Seed, "pot checks");
    private readonly CsvText _csv = new("time", "house", "bench", "pot", "grader", "level", "note");

    public string Write()
    {
        for (LocalDate date = GannetRow.FirstDay; date <= GannetRow.LastDay; date = date.PlusDays(1))
        {
            bool weekend = date.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday;
            double[] chance = weekend ? [0.7, 0, 0] : [1, 0.95, 0.35];
            for (int round = 0; round < RoundStarts.Length; round++)
            {
                int start = RoundStarts[round] + (int)(_random.NextDouble() * 25);
                if (_random.NextDouble() < chance[round])
                {
                    Round(date, start, weekend);
                }
            }
        }

        return _csv.ToString();
    }

    private void Round(LocalDate date, int start, bool weekend)
    {
        double pick = _random.NextDouble();
        Grader grader = Grader.All[weekend ? 1 : pick < 0.5 ? 0 : pick < 0.8 ? 1 : 2];
        bool together = !weekend && _random.NextDouble() < 0.15;
        int minute = start;
        foreach (HouseRun house in run.Houses)
        {
            foreach (int pot in Pots())
            {
                LocalDateTime time = date.AtMidnight().PlusMinutes(minute);
                Check(house, pot, time, grader);
                if (together)
                {
                    Check(house, pot, time, grader == Grader.All[0] ? Grader.All[2] : Grader.All[0]);
                }

                minute++;
            }

            minute += 3;
        }
    }

    // Four of the eight pots of each bench, in order.
    private IEnumerable<int> Pots()
    {
        int skip = (int)(_random.NextDouble() * 2);
        return Enumerable.Range(0, 2 * PotBench.PotsABench).Where(pot => pot % 2 == skip);
    }

    private void Check(HouseRun house, int pot, LocalDateTime time, Grader grader)
    {
        int minute = house.Calendar.MinuteOf(GannetRow.Zone.AtStrictly(time).ToInstant());
        double level = PotBench.Level(house.PotMl[minute / 60][pot]);
        double grade = grader.Grade(level, _random.NextNormal());
        string note = grade <= 1.5 ? "wilting at the rim" : grade >= 5 ? "dripping" : "";
        string number = CsvText.Number((pot % PotBench.PotsABench) + 1, "0");
        _csv.Row(CsvText.Time(time), house.Options.Id, PotBench.BenchOf(pot), number, grader.Initials, CsvText.Number(grade, "0.#"), note);
    }
}
