using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>
/// How often each check speaks on simulated weeks in which no sensor has a fault: steps in doubt or failed, and weeks of a series with
/// any; and how near honest readings come to the limits. docs/science/quality.md quotes it.
/// </summary>
internal static class FalseAlarms
{
    private static readonly string[] Weeks = [.. Enumerable.Range(38, 8).Select(w => $"2025-W{w}")];

    /// <summary><c>false-alarms [SEEDS]</c>, twenty by default.</summary>
    public static int Run(string[] args)
    {
        int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 20;
        var counts = new SortedDictionary<(QualityCheck Check, string Channel), Tally>();
        var nearest = new SortedDictionary<string, Nearest>(StringComparer.Ordinal);
        for (int seed = 1; seed <= seeds; seed++)
        {
            NurseryRun run = NurseryRun.Of((ulong)seed);
            foreach (HouseRun house in run.Houses)
            {
                CleanHouse logs = CleanHouse.Of(run, house);
                foreach (string week in Weeks)
                {
                    Count(Quality.Check(Alignment.Align(logs.Week(week).Input)), counts, nearest);
                }
            }
        }

        Print(seeds, counts, nearest);
        return 0;
    }

    private static void Print(int seeds, SortedDictionary<(QualityCheck Check, string Channel), Tally> counts, SortedDictionary<string, Nearest> nearest)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seeds} seeds, 2 houses, {Weeks.Length} weeks"));
        foreach (var check in counts.GroupBy(c => c.Key.Check))
        {
            Tally all = check.Select(c => c.Value).Aggregate((a, b) => a.Plus(b));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{check.Key,-17} {all}"));
            foreach (((_, string channel), Tally tally) in check.Where(c => c.Value.Found > 0))
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {channel,-15} {tally}"));
            }
        }

        foreach ((string channel, Nearest near) in nearest.Where(n => n.Value.Speaks))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{channel}: largest spike {near.Spike:0.00} of {near.Channel.SpikeLimit}, largest step {near.Step:0.00} of {near.Channel.StepLimit}, least range of 24 h {near.Range:0.00} where {near.Channel.LeastDailyRange} is doubtful"));
        }
    }

    private static void Count(HousePeriod period, SortedDictionary<(QualityCheck Check, string Channel), Tally> counts, SortedDictionary<string, Nearest> nearest)
    {
        foreach (Series series in period.Series)
        {
            SeriesFlags flags = period.Checks[series.Key];
            int steps = Enumerable.Range(period.FirstStep, period.Frame.Axis.Count - period.FirstStep).Count(i => period.Frame.Flags(series.Key)[i] != QualityFlag.Missing);
            foreach (QualityCheck check in Enum.GetValues<QualityCheck>())
            {
                int found = Enumerable.Range(period.FirstStep, period.Frame.Axis.Count - period.FirstStep).Count(i => flags.Found(check, i));
                counts[(check, series.Channel.Name)] = counts.GetValueOrDefault((check, series.Channel.Name)).Plus(new Tally(steps, found, 1, found > 0 ? 1 : 0));
            }

            nearest.TryAdd(series.Channel.Name, new Nearest(series.Channel));
            nearest[series.Channel.Name].Take(period.Frame.Values(series.Key), 24 * period.StepsPerHour);
        }
    }

    private readonly record struct Tally(long Steps, long Found, int Weeks, int WeeksFound)
    {
        public Tally Plus(Tally other) => new(Steps + other.Steps, Found + other.Found, Weeks + other.Weeks, WeeksFound + other.WeeksFound);

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Found,7} of {Steps,9} steps ({100.0 * Found / Steps:0.0000} %), {WeeksFound,4} of {Weeks,5} weeks of a series");
    }

    private sealed class Nearest(Channel channel)
    {
        public Channel Channel => channel;

        public double Spike { get; private set; }

        public double Step { get; private set; }

        public double Range { get; private set; } = double.PositiveInfinity;

        public bool Speaks => double.IsFinite(channel.SpikeLimit) || double.IsFinite(channel.StepLimit) || double.IsFinite(channel.LeastDailyRange);

        public void Take(ImmutableArray<double> values, int day)
        {
            for (int i = 1; i < values.Length; i++)
            {
                Step = Math.Max(Step, Or0(values[i] - values[i - 1]));
                Spike = i + 1 < values.Length ? Math.Max(Spike, Or0(values[i] - ((values[i - 1] + values[i + 1]) / 2))) : Spike;
            }

            for (int i = 0; i + day < values.Length; i += 12)
            {
                double[] window = [.. values[i..(i + day + 1)].Where(double.IsFinite)];
                Range = window.Length > day / 2 ? Math.Min(Range, window.Max() - window.Min()) : Range;
            }
        }

        private static double Or0(double difference) => double.IsNaN(difference) ? 0 : Math.Abs(difference);
    }
}
