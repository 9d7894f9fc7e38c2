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
    private readonly SeededRandom _scales = Seeds.Stream(run.Seed, "pot scales");
    private readonly List<PotLook> _looks = [];

    /// <summary>Weight of a pot at level 1 and at level 4. [g]</summary>
    public const double DryG = 430, SoakedG = DryG + PotBench.ContainerMl - PotBench.WiltingMl;

    /// <summary>The checks as a file.</summary>
    public string Write()
    {
        var csv = new CsvText("time", "house", "bench", "pot", "grader", "level", "weight", "leafState", "mediumC", "note");
        foreach (PotLook look in Looks())
        {
            string note = look.Grade <= 1.5 ? "wilting at the rim" : look.Grade >= 5 ? "dripping" : "";
            csv.Row(
                CsvText.Time(look.Time), look.House, look.Bench, CsvText.Number(look.Pot, "0"), look.Grader, CsvText.Number(look.Grade, "0.#"),
                look.WeightG is { } g ? CsvText.Number(g, "0") : "", look.LeafState, look.MediumC is { } c ? CsvText.Number(c, "0.0") : "", note);
        }

        return csv.ToString();
    }

    /// <summary>All checks in the order in which they are noted.</summary>
    public IReadOnlyList<PotLook> Looks()
    {
        if (_looks.Count > 0)
        {
            return _looks;
        }

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

        return _looks;
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
        double waterMl = house.PotMl[minute / 60][pot], weight = DryG + waterMl - PotBench.WiltingMl + (3 * _scales.NextNormal()), medium = MediumC(house, minute) + (0.3 * _scales.NextNormal());
        bool measured = pot % PotBench.PotsABench < 2; // the first pot of each bench is lifted onto the scales and its medium measured
        _looks.Add(new(
            time, house.Options.Id, PotBench.BenchOf(pot), (pot % PotBench.PotsABench) + 1, grader.Initials, grade, level,
            measured && weight >= DryG ? weight : null, LeafState(level), measured ? medium : null));
    }

    private static string LeafState(double level) => level switch
    {
        < 1.05 => "wilted",
        < 1.2 => "severe flagging",
        < 1.6 => "flagging",
        _ => "turgid",
    };

    /// <summary>The medium follows the air among the leaves over some hours and stays a little below it, since it gives off water. [°C]</summary>
    private static double MediumC(HouseRun house, int minute)
    {
        int from = Math.Max(0, minute - 240);
        double sum = 0;
        for (int i = from; i <= minute; i++)
        {
            sum += house.Minutes[i].CanopyC;
        }

        return (sum / (minute - from + 1)) - 0.5;
    }
}
