using System.Globalization;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.TestKit.Simulated;

namespace ClimateLens.Benchmarks;

/// <summary>How the outlook for the coming night did on simulated weeks; docs/validation.md quotes it.</summary>
internal static class OutlookTable
{
    private static readonly (string Week, string Next)[] Weeks = [("2025-W41", "2025-W42"), ("2025-W42", "2025-W43"), ("2025-W43", "2025-W44"), ("2025-W44", "2025-W45")];

    /// <summary><c>outlook [SEEDS]</c>, thirty by default.</summary>
    public static int Run(string[] args)
    {
        int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 30;
        (string House, OutlookReport? Outlook, double Came)[] all = [.. Enumerable.Range(1, seeds).AsParallel().AsOrdered().SelectMany(seed => Nights((ulong)seed))];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seeds} seeds, {Weeks.Length} weeks; what came is the risk hours of that night in the review of the week after"));
        Console.WriteLine("| House | Nights | Foretold | Mean hours that came | Off by, mean | Bias | Range holds it | Mean width of range | Median skill over night before, over mean night, foretold or not |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var group in all.GroupBy(n => n.House))
        {
            (OutlookReport Outlook, double Came)[] told = [.. group.Where(n => n.Outlook?.RiskHours is not null && double.IsFinite(n.Came)).Select(n => (n.Outlook!, n.Came))];
            OutlookScore[] scores = [.. group.Select(n => n.Outlook?.Score).OfType<OutlookScore>()];
            Console.WriteLine(told.Length == 0
                ? string.Create(CultureInfo.InvariantCulture, $"| {group.Key} | {group.Count()} | 0 | | | | | | {Skills(scores)} |")
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {group.Key} | {group.Count()} | {told.Length} | {told.Average(n => n.Came):0.0} | {told.Average(n => Math.Abs(n.Came - n.Outlook.RiskHours!.Value)):0.0} | {told.Average(n => n.Outlook.RiskHours!.Value - n.Came):0.0} | {100.0 * told.Count(n => n.Came >= n.Outlook.RiskHours!.Low && n.Came <= n.Outlook.RiskHours.High) / told.Length:0} % | {told.Average(n => n.Outlook.RiskHours!.High - n.Outlook.RiskHours.Low):0.0} | {Skills(scores)} |"));
        }

        return 0;
    }

    private static IEnumerable<(string House, OutlookReport? Outlook, double Came)> Nights(ulong seed)
    {
        NurseryRun run = NurseryRun.Of(seed);
        foreach ((string name, HouseRun house) in ((string, HouseRun)[])[("1, boom over the leaves", run.HouseOne), ("2, drip in the morning", run.HouseTwo)])
        {
            foreach ((string week, string next) in Weeks)
            {
                OutlookReport? outlook = ReviewPipeline.Run(SimulatedWeek.Of(run, house, week, null, Past.HistoryDays)).Outlook;
                Review after = ReviewPipeline.Run(SimulatedWeek.Of(run, house, next, null));
                double came = outlook is null ? double.NaN : after.Hours.Where(h => h.Start.ToInstant() >= outlook.Sunset.ToInstant() && h.Start.ToInstant() < outlook.Sunrise.ToInstant()).Count(h => h.Risk == true);
                yield return (name, outlook, came);
            }
        }
    }

    private static string Skills(OutlookScore[] scores) => $"{Median(scores.Select(s => s.SkillOverNightBefore))}, {Median(scores.Select(s => s.SkillOverMeanNight))}";

    private static string Median(IEnumerable<double?> values)
    {
        double[] known = [.. values.OfType<double>().Order()];
        return known.Length == 0 ? "" : known[known.Length / 2].ToString("0.00", CultureInfo.InvariantCulture);
    }
}
