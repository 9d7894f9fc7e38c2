using System.Diagnostics;
using System.Globalization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using ClimateLens.TestKit;

namespace ClimateLens.Benchmarks;

/// <summary>A site of 520 house-weeks (ten houses, a year): what it weighs, and what it costs to publish one changed week.</summary>
internal static class SiteCost
{
    private const int Houses = 10, Weeks = 52, Runs = 7;

    public static int Run()
    {
        using TemporaryFolder site = new();
        PageOptions options = new(UnitSystem.Metric);
        SitePublisher all = new(site.Path, options);
        Stopwatch watch = Stopwatch.StartNew();
        for (int house = 1; house <= Houses; house++)
        {
            for (int week = 1; week <= Weeks; week++)
            {
                all.Publish(Of(house, week, "first"));
            }
        }

        all.Complete("first");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Houses * Weeks} house-weeks published in {watch.Elapsed.TotalSeconds:0.0} s, {1000 * watch.Elapsed.TotalSeconds / (Houses * Weeks):0} ms each"));
        Weight(site);
        List<double> seconds = [];
        for (int run = 0; run < Runs; run++)
        {
            watch.Restart();
            SitePublisher again = new(site.Path, options);
            again.Publish(Of(1, Weeks, $"changed {run}"));
            again.Complete($"changed {run}");
            seconds.Add(watch.Elapsed.TotalSeconds);
        }

        seconds.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"one week changed: median {seconds[Runs / 2]:0.00} s, least {seconds[0]:0.00}, most {seconds[^1]:0.00} ({Runs} runs)"));
        return 0;
    }

    private static void Weight(TemporaryFolder site)
    {
        foreach (string file in (string[])["house-1/2025-W52/index.html", "house-1/season.html", "index.html", "feed.xml", "site.json"])
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{file}: {new FileInfo(site.PathOf(file)).Length / 1000.0:0} kB"));
        }
    }

    private static Review Of(int house, int week, string input)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"2025-W{week:00}"), id = house.ToString(CultureInfo.InvariantCulture);
        if (!IsoWeek.TryParse(name, out _))
        {
            throw new ArgumentException($"{name} is no week.", nameof(week));
        }

        Review review = SampleReviews.Rich(name, id, $"House {id}");
        return review with { Provenance = review.Provenance with { InputHash = $"{review.Provenance.InputHash} {input}" } };
    }
}
